using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Lime;

/// <summary>A material that is no choice here, with its dangers.</summary>
internal sealed record LimeExclusionAnswer(string Material, string Name, string Reason, IReadOnlyList<string> Cautions, CitedAs By) : Sourced(By);
