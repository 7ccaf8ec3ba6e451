using System.Text.Json;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Files;
using Spectre.Console;

namespace SoilAdvisor.Cli.Screens;

/// <summary>The rating of one sample on the terminal.</summary>
internal static class RatingScreen
{
    public static void Draw(IAnsiConsole screen, string sample, JsonElement answer, Places places)
    {
        var guide = answer.At("guide");
        screen.Heading($"Soil test \"{sample}\"");
        screen.Paragraph($"Read by: {guide.Text("title")}, {guide.Text("institution")} [{Sheets.Cited(guide)}].");
        screen.Paragraph($"Why this guide: {answer.Text("guideReason")}");
        screen.Write(Ratings(answer.Each("ratings")));
        screen.Refused(answer.Each("refused"));
        if (answer.Each("otherGuides").Any())
        {
            screen.WriteLine();
            screen.Paragraph($"Other guides that cover this test: {string.Join(", ", answer.Each("otherGuides").Select(g => g.AsText()))}. Their limits differ.");
        }

        foreach (var rating in answer.Each("ratings").Where(r => r.Each("working").Any()))
        {
            screen.Heading($"Working: {Sheets.Analyte(rating.Text("analyte"))} of \"{sample}\"");
            WorkingScreen.Draw(screen, rating.Each("working"), places);
        }
    }

    /// <summary>Ratings as a table.</summary>
    public static Table Ratings(IEnumerable<JsonElement> ratings)
    {
        var table = Sheets.Table("analyte", "reading", "class", "we read it as", "limits of the class", "source");
        foreach (var rating in ratings)
        {
            var scale = rating.At("scale");
            table.Row(
                Sheets.Analyte(rating.Text("analyte")),
                Reading(rating.At("value"), scale),
                rating.Text("class"),
                rating.Text("standing"),
                Limits(scale.Each("classes").FirstOrDefault(c => c.Text("class") == rating.Text("class")), scale.Text("unit")),
                Sheets.CitedShort(rating));
        }

        return table;
    }

    // The reading as the laboratory wrote it, and in the guide's unit where that is another.
    private static string Reading(JsonElement reading, JsonElement scale)
    {
        var sign = reading.Text("comparator") is { } comparator ? $"{comparator} " : "";
        var reported = $"{sign}{reading.Text("value")} {reading.Text("unit")}";
        return reading.Text("unit") == scale.Text("unit") ? reported : $"{reported} = {sign}{scale.Text("position")} {scale.Text("unit")}";
    }

    private static string Limits(JsonElement limits, string? unit) => (limits.Text("lower"), limits.Text("upper")) switch
    {
        (null, null) => "",
        (null, { } upper) => $"up to {upper} {unit}",
        ({ } lower, null) => $"{lower} {unit} and more",
        ({ } lower, { } upper) => $"{lower} to {upper} {unit}",
    };
}
