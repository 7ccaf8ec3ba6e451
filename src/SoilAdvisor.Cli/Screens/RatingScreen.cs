using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>The rating of one sample on the terminal.</summary>
internal static class RatingScreen
{
    public static void Draw(Paper paper, string sample, JsonElement answer)
    {
        var guide = answer.At("guide");
        paper.Heading($"Soil test \"{sample}\"");
        paper.Paragraph($"Read by: {guide.Text("title")}, {guide.Text("institution")} [{paper.Cited(guide)}].");
        paper.Paragraph($"Why this guide: {answer.Text("guideReason")}");
        paper.Suspicions(answer.Each("suspicions"));
        Ratings(paper, answer.Each("ratings"));
        paper.Refused(answer.Each("refused"));
        NitrateTestScreen.Draw(paper, answer.At("nitrateTest"));
        IndexScreen.Draw(paper, answer);
        Converted(paper, answer.Each("converted").ToList());
        CationsScreen.Draw(paper, answer.At("cations"));
        GuidesScreen.Draw(paper, answer);
        if (answer.Each("otherGuides").Any() && !answer.Has("beside"))
        {
            paper.Paragraph($"Other guides that cover this test: {string.Join(", ", answer.Each("otherGuides").Select(g => g.AsText()))}. Their limits differ.");
        }

        if (answer.At("nitrateTest").Each("working").Any())
        {
            paper.Heading($"Working: nitrate test of \"{sample}\"");
            WorkingScreen.Draw(paper, answer.At("nitrateTest").Each("working"));
        }

        foreach (var rating in answer.Each("ratings").Where(r => r.Each("working").Any()))
        {
            paper.Heading($"Working: {Analyte(rating.Text("analyte"))} of \"{sample}\"");
            WorkingScreen.Draw(paper, rating.Each("working"));
        }
    }

    private static void Converted(Paper paper, List<JsonElement> converted)
    {
        if (converted.Count == 0)
        {
            return;
        }

        paper.Paragraph("Estimated by another method, because you named the conversion. A measurement is better.");
        Ratings(paper, converted.Select(c => c.At("rating")));
        paper.List(converted.Select(c => $"{c.Text("conversion")}, read by {c.Text("guide")}: {string.Join(" ", c.Each("assumptions").Select(a => a.Text("text")))} [{paper.Cited(c)}]"));
    }

    /// <summary>Ratings as a table.</summary>
    public static void Ratings(Paper paper, IEnumerable<JsonElement> ratings) => paper.Put(
        ["analyte", "reading", "class, and how sure", "we read it as", "limits of the class", "source"],
        [.. ratings.Select(rating => Row(paper, rating))]);

    private static string?[] Row(Paper paper, JsonElement rating)
    {
        var scale = rating.At("scale");
        return
        [
            Analyte(rating.Text("analyte")),
            Reading(rating.At("value"), scale) + Likely(rating.At("likely")),
            rating.Has("classProbabilities") ? rating.Text("howSure") : $"{rating.Text("class")} (how sure: not known)",
            rating.Text("standing"),
            Limits(scale.Each("classes").FirstOrDefault(c => c.Text("class") == rating.Text("class")), scale.Text("unit")),
            paper.CitedShort(rating),
        ];
    }

    public static string Analyte(string? id) => id switch
    {
        "organicMatter" => "organic matter",
        "bufferPh" => "buffer pH",
        "cec" => "CEC",
        "ec" => "EC",
        null => "",
        _ => id,
    };

    // The reading as the laboratory wrote it, and in the guide's unit where that is another.
    private static string Reading(JsonElement reading, JsonElement scale)
    {
        var sign = reading.Text("comparator") is { } comparator ? $"{comparator} " : "";
        var reported = $"{sign}{reading.Text("value")} {reading.Text("unit")}";
        return reading.Text("unit") == scale.Text("unit") ? reported : $"{reported} = {sign}{scale.Text("position")} {scale.Text("unit")}";
    }

    private static string Likely(JsonElement likely) =>
        likely.ValueKind == JsonValueKind.Object ? $", likely {likely.Text("low")} to {likely.Text("high")}" : "";

    public static string Limits(JsonElement limits, string? unit) => (limits.Text("lower"), limits.Text("upper")) switch
    {
        (null, null) => "",
        (null, { } upper) => $"up to {upper} {unit}",
        ({ } lower, null) => $"{lower} {unit} and more",
        ({ } lower, { } upper) => $"{lower} to {upper} {unit}",
    };
}
