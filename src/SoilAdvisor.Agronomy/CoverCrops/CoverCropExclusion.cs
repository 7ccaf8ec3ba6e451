namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>A cover crop that does not fit, and why.</summary>
/// <param name="CoverCrop">Id of the species.</param>
/// <param name="Reasons">The reasons.</param>
public sealed record CoverCropExclusion(string CoverCrop, IReadOnlyList<CoverCropReason> Reasons);
