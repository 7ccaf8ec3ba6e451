using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>One printed part of a season's rate: how much of it, and when.</summary>
/// <param name="Crop">Crop id.</param>
/// <param name="Nutrient">The nutrient.</param>
/// <param name="Order">From 1.</param>
/// <param name="Rate">How much; null where the guide prints only the time.</param>
/// <param name="When">When, in the guide's sense and our words.</param>
/// <param name="Source">Where it stands.</param>
public sealed record RateSplit(string Crop, PlantNutrient Nutrient, int Order, RateRange? Rate, string When, Citation Source);
