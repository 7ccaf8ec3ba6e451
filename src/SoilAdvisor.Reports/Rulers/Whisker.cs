namespace SoilAdvisor.Reports.Rulers;

/// <summary>Between which values the soil's true value likely lies, in the unit of the scale.</summary>
internal readonly record struct Whisker(double Low, double High);
