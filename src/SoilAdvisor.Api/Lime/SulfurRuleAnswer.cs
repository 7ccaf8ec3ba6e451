using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Lime;

/// <summary>One published sulfur rule, read for this soil; without rates where it does not reach.</summary>
internal sealed record SulfurRuleAnswer(string Rule, string Title, RateAnswer? Low, RateAnswer? High, decimal? FromPh, decimal? ToPh, string Text, CitedAs By) : Sourced(By);
