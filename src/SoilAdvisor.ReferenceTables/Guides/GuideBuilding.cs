using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;
using UnitsNet;

namespace SoilAdvisor.ReferenceTables.Guides;

/// <summary>From a checked guide folder to the guide.</summary>
internal static class GuideBuilding
{
    public static Guide Build(Document<GuideDocument> document, TableFolder folder)
    {
        var guide = document.Value;
        var indices = IndexRows.Of(folder, document.Folder);
        var scales = ScaleRows.Of(folder.TableIn(document.Folder, RowKinds.Ratings)!).ToList();
        return new Guide(
            guide.Id, guide.Title, guide.Institution, [.. guide.Region], guide.Crops, guide.CalibratedOn, guide.Citation(), guide.Notes,
            [.. scales.Where(s => !indices.ContainsKey(s.Rated)).Select(s => Scale(s, AnalyteOf(s.Rated), null))])
        {
            Indices = [.. indices.Values.Select(i => Index(i, scales.Where(s => s.Rated == i.Id)))],
            Ceilings = [.. folder.RowsIn(document.Folder, RowKinds.Ceilings).Select(row => Ceiling(row, indices))],
        };
    }

    private static GuideIndex Index(IndexRows index, IEnumerable<ScaleRows> scales) => new(
        index.Id,
        index.About,
        index.Formula!,
        [.. index.Rows.Select(row => new IndexInput(row.Needed("symbol"), AnalyteOf(row.Needed("analyte")), MethodOf(row, null), UnitOf(row)))],
        [.. scales.Select(s => Scale(s, index.About, index.Id))],
        index.Rows[0].Citation());

    private static GuideCeiling Ceiling(TableRow row, IReadOnlyDictionary<string, IndexRows> indices)
    {
        var index = indices.GetValueOrDefault(row.Needed("analyte"));
        return new GuideCeiling(
            index?.About ?? AnalyteOf(row.Needed("analyte")),
            index?.Id,
            MethodOf(row, null),
            UnitOf(row),
            row.NeededNumber("limit"),
            row.IsYes("limit_included"),
            row.Needed("jurisdiction"),
            row.Needed("what_it_asks"),
            row["condition"],
            row.Citation());
    }

    private static Analyte AnalyteOf(string word) => Words.Analytes.Read(word).Value;

    private static ReportingUnit UnitOf(TableRow row) => Words.Units.Read(row.Needed("unit")).Value;

    private static ScaleMethod MethodOf(TableRow row, Procedure? procedure) => new(
        row["extractant"] is { } word ? Words.Extractants.Read(word).Value : null,
        row.Needed("detection") switch
        {
            "icp" => ScaleDetection.Icp,
            "colorimetric" => ScaleDetection.Colorimetric,
            "any" => ScaleDetection.Any,
            _ => ScaleDetection.NotStated,
        },
        procedure);

    private static RatingScale Scale(ScaleRows scale, Analyte analyte, string? index)
    {
        var first = scale.First;
        var procedure = first["method"] is { } method and not "not-stated" ? Words.ProceduresOf(analyte)!.Read(method).Value : (Procedure?)null;
        return new RatingScale(
            analyte,
            MethodOf(first, procedure),
            UnitOf(first),
            scale.PrintedDecimals,
            [.. scale.Rows.Select(Class)])
        {
            Index = index,
            CropGroup = first["crop_group"],
            SoilGroups = first.SoilGroups(),
            Subregion = first["subregion"],
            Conditions = [.. ConditionCell.Of(first).Conditions],
            Timing = first["timing"] is { } timing ? Words.Timings.Read(timing).Value : null,
            Depth = Depth(first),
        };
    }

    private static SampleDepth? Depth(TableRow row) => (row.Number("depth_from"), row.Number("depth_to")) is ({ } from, { } to)
        ? new SampleDepth(Length.FromInches((double)from), Length.FromInches((double)to))
        : null;

    private static RatingClass Class(TableRow row) => new(
        row.Needed("class"),
        Enum.Parse<Standing>(row.Needed("standing"), ignoreCase: true),
        row.Needed("standing_basis") == "ours",
        row.Number("lower"),
        row.IsYes("lower_included"),
        row.Number("upper"),
        row.IsYes("upper_included"),
        row.Number("lower_per_cec") ?? 0,
        row.Number("upper_per_cec") ?? 0,
        row.Citation());
}
