using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Lime;

/// <summary>What the organic standard says of elemental sulfur.</summary>
internal sealed record SulfurStatusAnswer(string Rule, string Section, string Text, CitedAs By) : Sourced(By);
