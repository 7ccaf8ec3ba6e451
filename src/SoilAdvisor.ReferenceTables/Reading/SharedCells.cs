using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>Cells that several kinds of table write in the same way.</summary>
internal static class SharedCells
{
    public static bool IsYes(this TableRow row, string column) => row.Needed(column) == "yes";

    public static PlantNutrient Nutrient(this TableRow row) => Enum.Parse<PlantNutrient>(row.Needed("nutrient"));

    public static IReadOnlyList<SoilGroup> SoilGroups(this TableRow row) => [.. row.Parts("soil_group").Select(word => Words.SoilGroups.Read(word).Value)];

    /// <summary>The range of low and high in the unit column; one printed number has both ends equal.</summary>
    public static RateRange RateRange(this TableRow row)
    {
        var low = row.NeededNumber("low");
        return new RateRange(MassPerArea(low, row.Needed("unit")), MassPerArea(row.Number("high") ?? low, row.Needed("unit")));
    }

    private static MassPerArea MassPerArea(decimal value, string unit) => unit switch
    {
        "lb/acre" => Agronomy.Quantities.MassPerArea.FromPoundsPerAcre((double)value),
        "kg/ha" => Agronomy.Quantities.MassPerArea.FromKilogramsPerHectare((double)value),
        "lb/1000-sq-ft" => Agronomy.Quantities.MassPerArea.FromPoundsPer1000SquareFeet((double)value),
        _ => throw new InvalidOperationException($"The unit {unit} was let through."),
    };
}
