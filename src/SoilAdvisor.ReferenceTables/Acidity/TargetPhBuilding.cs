using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Acidity;

/// <summary>From checked rows to the published target pH.</summary>
internal static class TargetPhBuilding
{
    public const string AllOthers = "all-others";

    public static IEnumerable<TargetPhRow> Build(TableFolder folder) => folder.RowsOf(RowKinds.TargetPhs).Select(row => new TargetPhRow(
        row.Needed("crop_group"),
        [.. row.Parts("crops").Where(c => c != AllOthers)],
        row.Parts("crops").Contains(AllOthers),
        row.Needed("soil_class"),
        LimeWords.Soils.Read(row.Needed("soil")).Value,
        Ph(row),
        row.Needed("region"),
        row.Parts("regions"),
        row.Citation()));

    private static PublishedPh Ph(TableRow row)
    {
        var (low, high) = (row.NeededNumber("ph_low"), row.NeededNumber("ph_high"));
        return row.Needed("kind") switch
        {
            "target" => new PublishedPh.Target(low),
            "optimum" => new PublishedPh.Optimum(low, high),
            "minimum" => new PublishedPh.Floor(low),
            _ => new PublishedPh.OptimumAndTarget(low, high),
        };
    }
}
