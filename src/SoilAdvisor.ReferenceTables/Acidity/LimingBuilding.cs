using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Acidity.Stones;
using SoilAdvisor.Agronomy.Acidity.Sulfur;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Acidity;

/// <summary>From the checked tables of stone, doses and sulfur to their types.</summary>
internal static class LimingBuilding
{
    public static LimingTables Build(TableFolder folder) => new(
        [.. folder.RowsOf(RowKinds.LimingFigures).Select(r => new LimingFigure(r.Needed("subject"), r.Needed("property"), r.Number("value"), r.Number("low"), r.Number("high"), r.Needed("unit"), r.Citation(), r["note"]))],
        folder.RowsOf(RowKinds.Sieves).ToDictionary(r => (int)r.NeededNumber("mesh"), r => r.NeededNumber("opening")),
        [.. folder.RowsOf(RowKinds.LimeIndexes).Select(Index)],
        [.. folder.RowsOf(RowKinds.LimeDoseLimits).Select(Limit)],
        [.. folder.RowsOf(RowKinds.MagnesiumCutOffs).Select(r => new MagnesiumCutOff(
            r.Needed("id"), r.Needed("title"), r.Needed("region"), r.NeededNumber("dolomitic_below"), Words.Units.Read(r.Needed("unit")).Value, r.Citation()))],
        [.. folder.RowsOf(RowKinds.SulfurTable).Select(r => new SulfurCell(
            Enum.Parse<SulfurSoil>(r.Needed("soil"), ignoreCase: true), r.NeededNumber("start_ph"), r.NeededNumber("goal_ph"), r.NeededNumber("rate"), r.Citation()))],
        [.. folder.RowsOf(RowKinds.SulfurRules).Select(r => new SulfurFigure(r.Needed("rule"), r.Needed("symbol"), r.NeededNumber("value"), r.Needed("unit"), r.Citation()))]);

    private static LimeIndex Index(TableRow row) => new(
        row.Needed("id"),
        row.Needed("title"),
        row.Parts("region"),
        row["formula"],
        row["sieve_data"] == "by-class",
        row.IsYes("moisture_counted"),
        row.Needed("unit"),
        (double)row.NeededNumber("whole"),
        (double?)row.Number("legal_minimum"),
        Enum.Parse<EffectiveLimeIndex>(row.Needed("counts").Replace("-", "", StringComparison.Ordinal), ignoreCase: true),
        row.Citation(),
        row["note"]);

    private static DoseLimit Limit(TableRow row) => new(
        row.Needed("id"),
        row.Needed("title"),
        row["region"],
        row.Needed("incorporation") == "surface",
        row.Needed("ground"),
        [.. row.Parts("soil_group").Select(g => Words.SoilGroups.Read(g).Value)],
        row.NeededNumber("largest"),
        row.Needed("unit"),
        (int?)row.Number("months_from"),
        (int?)row.Number("months_to"),
        row.Citation(),
        row["note"]);
}
