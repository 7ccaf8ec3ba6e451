using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Lime;

/// <summary>The published largest single dose that was used.</summary>
internal sealed record DoseLimitAnswer(string? Limit, string Text, CitedAs By) : Sourced(By);
