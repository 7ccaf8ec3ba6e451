using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>Guides side by side on the terminal: an analyte a row, a guide a column, as many columns as the screen holds.</summary>
internal static class GuidesScreen
{
    private const int AnalyteColumns = 16;
    private const int GuideColumns = 20;

    public static void Draw(Paper paper, JsonElement answer)
    {
        if (!answer.Has("beside"))
        {
            return;
        }

        List<JsonElement> views = [answer, .. answer.Each("beside")];
        paper.Heading("What other guides say of the same soil test");
        paper.Paragraph("Each guide keeps to its own limits, for its own region. That they differ is no fault of the soil or of the laboratory.");
        paper.List(views.Select(v => Guide(paper, v.At("guide"))));
        var analytes = views.SelectMany(v => v.Each("ratings").Select(r => r.Text("analyte"))).Distinct().ToList();
        var columns = Math.Max(GuideColumns, views.Max(v => v.At("guide").Text("id")!.Length) + 2);
        foreach (var shown in views.Chunk(Math.Max(1, (paper.Width - AnalyteColumns) / columns)))
        {
            paper.Put(
                ["analyte", .. shown.Select(v => v.At("guide").Text("id")!)],
                [.. analytes.Select(a => (string?[])[RatingScreen.Analyte(a), .. shown.Select(v => Cell(v, a))])]);
        }

        paper.List(answer.Each("agreement").Select(a => a.Text("text")));
        paper.Refused(answer.Each("beside").SelectMany(v => v.Each("refused")).Where(r => r.Text("code") == "context-not-covered"));
    }

    private static string Guide(Paper paper, JsonElement guide) =>
        $"{guide.Text("id")}: {guide.Text("institution")}, for {string.Join(", ", guide.Each("regions").Select(r => r.AsText()))}; calibrated on {CalibratedOn(guide.Text("calibratedOn"))} [{paper.Cited(guide)}]";

    private static string? CalibratedOn(string? word) => word switch
    {
        "field-crops" => "field crops, so take care with vegetables",
        "general" => "crops in general",
        _ => word,
    };

    private static string Cell(JsonElement view, string? analyte)
    {
        var rating = view.Each("ratings").FirstOrDefault(r => r.Text("analyte") == analyte);
        if (rating.ValueKind != JsonValueKind.Object)
        {
            return "no limits that apply";
        }

        var scale = rating.At("scale");
        var read = rating.At("value").Text("unit") == scale.Text("unit") ? "" : $"{scale.Text("position")} {scale.Text("unit")}: ";
        return scale.Has("target")
            ? $"{read}{rating.Text("class")}; target {RatingScreen.Limits(scale.At("target"), scale.Text("unit"))}"
            : read + rating.Text("class");
    }
}
