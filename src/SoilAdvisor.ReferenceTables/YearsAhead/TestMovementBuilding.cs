using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.YearsAhead;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.YearsAhead;

/// <summary>From the checked table of test changes to the published movements.</summary>
internal static class TestMovementBuilding
{
    public static TestMovements Build(TableFolder folder) => new([.. folder.RowsOf(RowKinds.TestChanges).Select(row => new PublishedMovement(
        row.Needed("id"),
        Enum.Parse<PlantNutrient>(row.Needed("nutrient")),
        row["extractant"] is { } extractant ? Words.Extractants.Read(extractant).Value : null,
        row["printed_for"] is { } printed ? Words.Extractants.Read(printed).Value : null,
        MovementWords.Use(row.Needed("used_for")),
        row.Number("value"),
        row.Number("per_cec"),
        row.Number("band_factor"),
        row.Number("low"),
        row.Number("high"),
        row["unit"],
        row.Parts("regions"),
        row["text"],
        row.Citation(),
        row["note"]))]);
}
