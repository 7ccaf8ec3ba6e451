using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Planning.Beds;

/// <summary>What has to be supplied of one nutrient for one planting, after credits and before lime counts.</summary>
/// <param name="Nutrient">The nutrient.</param>
/// <param name="PlantingIndex">The planting.</param>
/// <param name="Low">Low end of the need less the low end of the credits; not below zero.</param>
/// <param name="High">High end of the need less the low end of the credits; not below <paramref name="Low"/>.</param>
/// <param name="OneNumber">True when the guide prints one number.</param>
internal sealed record PlantingFloor(Nutrient Nutrient, int PlantingIndex, MassPerArea Low, MassPerArea High, bool OneNumber);
