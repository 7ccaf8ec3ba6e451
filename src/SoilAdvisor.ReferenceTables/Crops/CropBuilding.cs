using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Crops;

/// <summary>From the checked crop tables to the crops.</summary>
internal static class CropBuilding
{
    public static IEnumerable<Crop> Build(TableFolder folder)
    {
        var values = folder.RowsOf(RowKinds.CropValues).ToLookup(r => r.Needed("crop"));
        var removals = folder.RowsOf(RowKinds.Removals).ToLookup(r => r.Needed("crop"));
        return folder.RowsOf(RowKinds.Crops).Select(row => new Crop(
            row.Needed("id"),
            row.Needed("name"),
            row["latin_name"],
            row.Needed("family"),
            row.Needed("edible_part"),
            row.Needed("soil_contact") == "contact" ? SoilContact.Contact : SoilContact.NoContact,
            row["boron_response"],
            row.IsYes("sensitive_to_boron"),
            [.. values[row.Needed("id")].Select(Value)],
            [.. removals[row.Needed("id")].Select(Removal)],
            row.Citation()));
    }

    private static CropValue Value(TableRow row) =>
        new(row.Needed("property"), row.Number("value"), row.Number("low"), row.Number("high"), row.Needed("unit"), row.Citation(), row["note"]);

    private static Removal Removal(TableRow row) => new(
        row.Needed("part"),
        row.Needed("basis"),
        row.Needed("unit"),
        row.Number("n"),
        row.Number("p2o5"),
        row.Number("k2o"),
        row.Number("ca"),
        row.Number("mg"),
        row.Number("s"),
        row.Citation(),
        row["note"]);
}
