using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.CoverCrops;

/// <summary>From the checked cover crop tables to the cover crops.</summary>
internal static class CoverCropBuilding
{
    public static IEnumerable<CoverCrop> Build(TableFolder folder)
    {
        var values = folder.RowsOf(RowKinds.CoverCropValues).ToLookup(r => r.Needed("cover_crop"));
        return folder.RowsOf(RowKinds.CoverCrops).Select(row => new CoverCrop(
            row.Needed("id"),
            row.Needed("name"),
            row["latin_name"],
            row.Needed("family"),
            row.Needed("life_cycle"),
            row.Needed("season"),
            [.. values[row.Needed("id")].Select(Value)],
            row.Citation()));
    }

    public static CoverCropTables Tables(IReadOnlyList<CoverCrop> species, TableFolder folder) => new(
        species,
        [.. folder.RowsOf(RowKinds.CoverCropRegionalDates).Select(Dates)],
        [.. folder.RowsOf(RowKinds.CoverCropPlantBack).Select(PlantBack)],
        [.. folder.RowsOf(RowKinds.CoverCropHosts).Select(row => new CoverCropHost(
            row.Needed("cover_crop"), row.Needed("problem"), row.Needed("standing"), [.. row.Parts("families")], row.Needed("text"), row.Citation()))],
        [.. folder.RowsOf(RowKinds.CoverCropTrials).Select(row => new CoverCropTrial(
            row.Needed("cover_crop"), row.Needed("subject"), row.Needed("says"), row.Needed("setting"), row.Needed("text"), row.Citation()))],
        [.. folder.RowsOf(RowKinds.CoverCropStageNitrogen).Select(row => new StageNitrogenContent(
            row.Needed("plant_type"), row.Needed("stage"), row.NeededNumber("percent_low"), row.NeededNumber("percent_high"), row.Citation()))],
        [.. folder.RowsOf(RowKinds.CoverCropTerminationZones).Select(row => new TerminationZone(
            (int)row.NeededNumber("zone"), (int)row.NeededNumber("days_from_planting"), row.Needed("text"), row.Citation()))]);

    private static RegionalDates Dates(TableRow row) => new(
        row.Needed("cover_crop"),
        row.Needed("what"),
        ((int)row.NeededNumber("from_month"), (int)row.NeededNumber("from_day")),
        row.Number("to_month") is { } month && row.Number("to_day") is { } day ? ((int)month, (int)day) : null,
        row.Needed("region"),
        [.. row.Parts("regions")],
        row.Needed("text"),
        row.Citation());

    private static PlantBackRule PlantBack(TableRow row) => new(
        row.Needed("id"),
        row.Needed("cause"),
        [.. row.Parts("cover_crops")],
        [.. row.Parts("next_crops")],
        row.Needed("when"),
        (int)row.NeededNumber("days_low"),
        (int?)row.Number("days_high"),
        row["binding"] == "yes",
        row.Needed("text"),
        row.Citation());

    public static CoverCropRules Rules(TableFolder folder) => new(folder.RowsOf(RowKinds.CoverCropRules).ToDictionary(
        row => row.Needed("rule"),
        row => new CoverCropRule(row.Needed("rule"), row.Number("value"), row["text"], row.Citation(), row["note"]),
        StringComparer.Ordinal));

    private static CoverCropValue Value(TableRow row) =>
        new(row.Needed("property"), row.Number("value"), row.Number("low"), row.Number("high"), row["unit"] ?? "", row["text"], row.Citation(), row["note"]);
}
