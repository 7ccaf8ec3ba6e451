using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>A finding of trials about what a cover crop does for phosphorus or nitrogen.</summary>
/// <param name="CoverCrop">Id of the species.</param>
/// <param name="Subject">phosphorus or nitrogen.</param>
/// <param name="Says">for, against or neither.</param>
/// <param name="Setting">field, pots or review.</param>
/// <param name="Text">What was found, with figures.</param>
/// <param name="Source">Where it stands.</param>
public sealed record CoverCropTrial(string CoverCrop, string Subject, string Says, string Setting, string Text, Citation Source);
