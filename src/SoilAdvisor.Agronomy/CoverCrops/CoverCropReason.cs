using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>One reason for or against a cover crop, with its weight and source.</summary>
/// <param name="Text">The reason in one plain sentence.</param>
/// <param name="Points">Its weight; negative speaks against.</param>
/// <param name="Source">Where it stands.</param>
public sealed record CoverCropReason(string Text, double Points, Citation Source);
