using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Materials.Prices;

/// <summary>What a pound of one nutrient costs in a material when the whole price is put on it.</summary>
/// <param name="Nutrient">Available nitrogen, available phosphate or potash.</param>
/// <param name="Content">Share of the material that counts in the season, low end of what is published; above zero.</param>
/// <param name="ContentHigh">The same at the high end; at least the low end.</param>
/// <param name="PerPound">Price of a pound by the low end: the dearer one, which the plan counts on.</param>
/// <param name="PerPoundLow">Price of a pound by the high end.</param>
/// <param name="Sources">Where the content stands.</param>
public sealed record NutrientPrice(Nutrient Nutrient, MassShare Content, MassShare ContentHigh, Money PerPound, Money PerPoundLow, IReadOnlyList<Citation> Sources);
