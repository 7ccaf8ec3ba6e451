using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>What the bed already has coming, as a range; the plan subtracts the low end and says so. Ends may be negative.</summary>
/// <param name="Nutrient">The nutrient.</param>
/// <param name="From">What earns it, in words.</param>
/// <param name="Low">Low end.</param>
/// <param name="High">High end.</param>
/// <param name="Timing">When it becomes available; null where not printed.</param>
/// <param name="Source">Where the credit stands.</param>
public sealed record NutrientCredit(PlantNutrient Nutrient, string From, MassPerArea Low, MassPerArea High, string? Timing, Citation Source);
