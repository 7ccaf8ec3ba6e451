using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>One published rule of sowing, mixing or measuring: a number, or words.</summary>
/// <param name="Rule">Id from <see cref="CoverCropRules.Known"/>.</param>
/// <param name="Value">The number; null for words.</param>
/// <param name="Text">The words; null for a number.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Note">Remark; null for none.</param>
public sealed record CoverCropRule(string Rule, decimal? Value, string? Text, Citation Source, string? Note);
