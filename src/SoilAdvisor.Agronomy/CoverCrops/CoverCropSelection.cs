namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>What fits a gap, best first, and what does not.</summary>
/// <param name="Gap">The gap.</param>
/// <param name="Choices">What fits.</param>
/// <param name="Excluded">What does not.</param>
public sealed record CoverCropSelection(Gap Gap, IReadOnlyList<CoverCropChoice> Choices, IReadOnlyList<CoverCropExclusion> Excluded);
