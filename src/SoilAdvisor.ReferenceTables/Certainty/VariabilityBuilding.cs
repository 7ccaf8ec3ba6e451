using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Certainty;

/// <summary>From the checked table of variability to the published spreads.</summary>
internal static class VariabilityBuilding
{
    public static Variability Build(TableFolder folder) => new([.. folder.RowsOf(RowKinds.Variability).Select(row => new Spread(
        row["analyte"] is { } analyte ? Words.Analytes.Read(analyte).Value : null,
        row["extractant"] is { } extractant ? Words.Extractants.Read(extractant).Value : null,
        SpreadWords.Kind(row.Needed("kind")),
        SpreadWords.Use(row.Needed("used_for")),
        row.Needed("use_basis") == "ours",
        SpreadWords.Measure(row.Needed("measure")),
        row.Number("value"),
        row.Number("low"),
        row.Number("high"),
        row["unit"] is { } unit ? Words.Units.Read(unit).Value : null,
        row.Citation(),
        row["note"]))]);
}
