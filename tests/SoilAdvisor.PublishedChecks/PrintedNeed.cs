using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.PublishedChecks;

/// <summary>A printed rate of one nutrient.</summary>
/// <param name="Nutrient">The nutrient.</param>
/// <param name="Low">The rate, or the low end.</param>
/// <param name="Unit">The unit as printed.</param>
/// <param name="High">The high end; null where one number is printed.</param>
public sealed record PrintedNeed(PlantNutrient Nutrient, double Low, string Unit, double? High = null);
