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

    private static CoverCropValue Value(TableRow row) =>
        new(row.Needed("property"), row.Number("value"), row.Number("low"), row.Number("high"), row["unit"] ?? "", row["text"], row.Citation(), row["note"]);
}
