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
        var scales = ScaleRows.Of(folder.TableIn(document.Folder, RowKinds.Ratings)!).Select(Scale).ToList();
        return new Guide(guide.Id, guide.Title, guide.Institution, [.. guide.Region], guide.Crops, guide.CalibratedOn, guide.Citation(), guide.Notes, scales);
    }

    private static RatingScale Scale(ScaleRows scale)
    {
        var first = scale.First;
        var analyte = Words.Analytes.Read(first.Needed("analyte")).Value;
        var extractant = first["extractant"] is { } word ? Words.Extractants.Read(word).Value : (Extractant?)null;
        var detection = first.Needed("detection") switch
        {
            "icp" => ScaleDetection.Icp,
            "colorimetric" => ScaleDetection.Colorimetric,
            "any" => ScaleDetection.Any,
            _ => ScaleDetection.NotStated,
        };
        var procedure = first["method"] is { } method and not "not-stated" ? Words.ProceduresOf(analyte)!.Read(method).Value : (Procedure?)null;
        return new RatingScale(
            analyte,
            new ScaleMethod(extractant, detection, procedure),
            Words.Units.Read(first.Needed("unit")).Value,
            scale.PrintedDecimals,
            [.. scale.Rows.Select(Class)])
        {
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
