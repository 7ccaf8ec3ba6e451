using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>What a guide advises for one nutrient of one planting (or of the whole season, for what is given once per soil test).</summary>
/// <param name="Nutrient">The nutrient.</param>
/// <param name="PlantingIndex">Which planting of the bed, from 0.</param>
/// <param name="Crop">The crop whose rate it is.</param>
/// <param name="Rate">The advised range.</param>
/// <param name="Class">The guide's class it was read with; null where no class changes it.</param>
/// <param name="Standing">Where that class stands; null where no class changes it.</param>
/// <param name="RateTable">Id of the rate table.</param>
/// <param name="Guide">Id of the guide it was read with; null where no class changes it.</param>
/// <param name="Removal">What the season's harvests remove, as the ceiling for incidental supply; null where no removal is held.</param>
/// <param name="Splits">Printed splits.</param>
/// <param name="Condition">Printed condition of the rate used; null for none.</param>
/// <param name="Alternatives">Other rates the table prints for this crop under other conditions, in words; empty for none.</param>
/// <param name="Source">Where the rate stands.</param>
public sealed record NutrientNeed(
    PlantNutrient Nutrient,
    int PlantingIndex,
    string Crop,
    RateRange Rate,
    string? Class,
    Ratings.Standing? Standing,
    string RateTable,
    string? Guide,
    MassPerArea? Removal,
    IReadOnlyList<RateSplit> Splits,
    string? Condition,
    IReadOnlyList<string> Alternatives,
    Citation Source);
