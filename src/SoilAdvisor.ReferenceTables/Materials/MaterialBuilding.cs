using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Materials;

/// <summary>From the checked material tables to the materials and their cautions.</summary>
internal static class MaterialBuilding
{
    public static IEnumerable<Caution> Cautions(TableFolder folder) =>
        folder.RowsOf(RowKinds.Cautions).Select(row => new Caution(row.Needed("id"), row.Needed("text"), row.Citation()));

    public static IEnumerable<Material> Build(TableFolder folder, IReadOnlyDictionary<string, Caution> cautions)
    {
        var values = folder.RowsOf(RowKinds.MaterialValues).ToLookup(r => r.Needed("material"));
        var links = folder.RowsOf(RowKinds.MaterialCautions).ToLookup(r => r.Needed("material"));
        return folder.RowsOf(RowKinds.Materials).Select(row => new Material(
            row.Needed("id"),
            row.Needed("name"),
            row.Needed("category"),
            row.Needed("basis"),
            Enum.Parse<ManureKind>(row.Needed("manure"), ignoreCase: true),
            Enum.Parse<OrganicStatus>(row.Needed("organic_status"), ignoreCase: true),
            row.Needed("organic_rule"),
            row.IsYes("counted_in_season"),
            row.Parts("never_with"),
            [.. values[row.Needed("id")].Select(Value)],
            [.. links[row.Needed("id")].Select(link => cautions[link.Needed("caution")])],
            row.Citation(),
            row["note"]));
    }

    private static MaterialValue Value(TableRow row) =>
        new(row.Needed("property"), row.Number("value"), row.Number("low"), row.Number("high"), row.Needed("unit"), row.Citation(), row["note"]);
}
