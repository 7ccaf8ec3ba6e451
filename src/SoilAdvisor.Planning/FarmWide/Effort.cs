namespace SoilAdvisor.Planning.FarmWide;

/// <summary>How far a search goes. The branches come before the clock, so that the same request gives the same plan.</summary>
/// <param name="Gap">Share of the objective that may be left unproven.</param>
/// <param name="Branches">Most branches.</param>
/// <param name="Seconds">Longest time; the last resort.</param>
internal readonly record struct Effort(double Gap, long Branches, double Seconds);
