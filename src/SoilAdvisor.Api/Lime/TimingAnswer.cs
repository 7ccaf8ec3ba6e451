using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Lime;

/// <summary>How long lime takes, and when to test again.</summary>
internal sealed record TimingAnswer(int MonthsFrom, int MonthsTo, string? Retest, string Text, CitedAs By) : Sourced(By);
