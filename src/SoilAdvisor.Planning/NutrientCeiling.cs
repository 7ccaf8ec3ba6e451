using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Planning;

/// <summary>Most of one nutrient that the grower or a rule allows on a bed, beside the limits of agronomy; the lower one rules.</summary>
/// <param name="Nutrient">The nutrient in its form: oxide and element, total and available are different ones.</param>
/// <param name="Most">Most from materials, lime and what was spread since the sample, over the season; zero or more.</param>
/// <param name="Reason">Why, in words.</param>
public sealed record NutrientCeiling(Nutrient Nutrient, MassPerArea Most, string Reason);
