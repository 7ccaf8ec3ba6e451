using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>One printed rate of a rate table.</summary>
/// <param name="Crop">Crop id.</param>
/// <param name="Nutrient">The nutrient.</param>
/// <param name="Class">The table's class, or "all" where no class changes the rate.</param>
/// <param name="Rate">The printed rate or range.</param>
/// <param name="PrintedLow">Low end as printed.</param>
/// <param name="PrintedHigh">High end as printed; null for one number.</param>
/// <param name="PrintedUnit">Unit as printed.</param>
/// <param name="SoilGroups">Textures it is meant for; empty for all.</param>
/// <param name="Condition">Printed condition; null for none.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Note">Remark; null for none.</param>
public sealed record RateRow(
    string Crop,
    PlantNutrient Nutrient,
    string Class,
    RateRange Rate,
    decimal PrintedLow,
    decimal? PrintedHigh,
    string PrintedUnit,
    IReadOnlyList<SoilGroup> SoilGroups,
    string? Condition,
    Citation Source,
    string? Note);
