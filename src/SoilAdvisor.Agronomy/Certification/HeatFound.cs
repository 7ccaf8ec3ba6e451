namespace SoilAdvisor.Agronomy.Certification;

/// <summary>What a temperature log shows against one rule.</summary>
/// <param name="State">Met, not met, or open because days, turnings or the rule's own words leave it so.</param>
/// <param name="DaysMet">Days whose readings all lie in the range.</param>
/// <param name="LongestRun">Most of them in a row.</param>
/// <param name="Missing">Days between first and last entry without a reading.</param>
/// <param name="Turnings">Turnings within the days that count best; null when turnings were not written down.</param>
/// <param name="From">First of those days; null when no day counts.</param>
/// <param name="To">Last of those days; null when no day counts.</param>
/// <param name="Words">The same in plain words, with the figures asked for.</param>
public sealed record HeatFound(FindingState State, int DaysMet, int LongestRun, IReadOnlyList<DateOnly> Missing, int? Turnings, DateOnly? From, DateOnly? To, string Words);
