using SoilAdvisor.Agronomy.Materials.Metals;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Materials;

/// <summary>From the checked tables of metals to the rules of each jurisdiction.</summary>
internal static class MetalRuleBuilding
{
    public static IEnumerable<MetalRule> Build(TableFolder folder)
    {
        var limits = folder.RowsOf(RowKinds.MetalLimits).ToLookup(r => r.Needed("rule"));
        return folder.RowsOf(RowKinds.MetalRules).Select(row => new MetalRule(
            row.Needed("id"), row.Needed("title"), row.Needed("region"), row.Needed("covers"), [.. limits[row.Needed("id")].Select(Limit)], row.Citation(), row["note"]));
    }

    private static MetalLimit Limit(TableRow row) => new(
        Enum.Parse<Metal>(row.Needed("metal")),
        RowKinds.MetalLimitKinds[row.Needed("kind")],
        row.NeededNumber("value"),
        row.Needed("unit"),
        (int?)row.Number("years"),
        row.Number("least_percent"),
        row.Citation());
}
