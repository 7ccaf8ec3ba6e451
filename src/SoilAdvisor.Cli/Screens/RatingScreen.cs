using System.Text.Json;
using SoilAdvisor.Cli.Connections;
using Spectre.Console;

namespace SoilAdvisor.Cli.Screens;

/// <summary>The rating of one sample on the terminal.</summary>
internal static class RatingScreen
{
    public static void Draw(IAnsiConsole screen, string sample, JsonElement answer)
    {
        var guide = answer.At("guide");
        screen.Heading($"Soil test \"{sample}\"");
        screen.Write(new Text($"Read by: {guide.Text("title")}, {guide.Text("institution")} [{Sheets.Cited(guide)}]."));
        screen.WriteLine();
        screen.Write(new Text($"Why this guide: {answer.Text("guideReason")}"));
        screen.WriteLine();
        screen.Write(Ratings(answer.Each("ratings")));
        screen.Refused(answer.Each("refused"));
        if (answer.Each("otherGuides").Any())
        {
            screen.WriteLine();
            screen.Write(new Text($"Other guides that cover this test: {string.Join(", ", answer.Each("otherGuides").Select(g => g.AsText()))}."));
            screen.WriteLine();
        }

        var working = answer.Each("ratings").SelectMany(r => r.Each("working")).ToList();
        if (working.Count > 0)
        {
            screen.Heading("Working");
            WorkingScreen.Draw(screen, working);
        }

        screen.Foot(answer);
    }

    /// <summary>Ratings as a table.</summary>
    public static Table Ratings(IEnumerable<JsonElement> ratings)
    {
        var table = Sheets.Table("analyte", "reading", "class", "we read it as", "limits of the class", "source");
        foreach (var rating in ratings)
        {
            var reading = rating.At("value");
            var scale = rating.At("scale");
            table.Row(
                rating.Text("analyte"),
                $"{reading.Text("comparator")}{(reading.Has("comparator") ? " " : "")}{reading.Text("value")} {reading.Text("unit")}",
                rating.Text("class"),
                rating.Text("standing"),
                Limits(scale.Each("classes").FirstOrDefault(c => c.Text("class") == rating.Text("class")), scale.Text("unit")),
                Sheets.Cited(rating));
        }

        return table;
    }

    private static string Limits(JsonElement limits, string? unit) => (limits.Text("lower"), limits.Text("upper")) switch
    {
        (null, null) => "",
        (null, { } upper) => $"up to {upper} {unit}",
        ({ } lower, null) => $"{lower} {unit} and more",
        ({ } lower, { } upper) => $"{lower} to {upper} {unit}",
    };
}
