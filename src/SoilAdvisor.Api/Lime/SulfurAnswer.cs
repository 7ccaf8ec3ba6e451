using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Lime;

/// <summary>How to lower the pH, or why not. It never stands beside lime.</summary>
internal sealed record SulfurAnswer(
    bool Advised, string Text, decimal SoilPh, decimal TargetPh, string? UsedRule, IReadOnlyList<SulfurRuleAnswer> Rules, IReadOnlyList<DoseAnswer> Doses,
    RateAnswer? TakenByEachPercentOfFreeLime, int RetestMonths, string? Retest, SulfurStatusAnswer? Organic, IReadOnlyList<string> Cautions, CitedAs By) : Sourced(By);
