namespace SoilAdvisor.Api.CoverCrops;

/// <summary>A cover crop that does not fit, and why.</summary>
internal sealed record CoverCropExclusionAnswer(string CoverCrop, IReadOnlyList<CoverCropReasonAnswer> Reasons);
