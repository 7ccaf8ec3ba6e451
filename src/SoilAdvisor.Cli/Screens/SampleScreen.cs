using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>Cores and real changes on the terminal.</summary>
internal static class SampleScreen
{
    private static readonly string[] Columns = ["", "before", "after", "change", "real from", "real change?"];

    /// <summary>How many cores, and how near they come.</summary>
    public static void DrawCores(Paper paper, JsonElement answer)
    {
        paper.Heading("Cores for one sample");
        foreach (var part in new[] { "cores", "precision" }.Select(name => answer.At(name)).Where(p => p.ValueKind == JsonValueKind.Object))
        {
            paper.Paragraph($"{part.Text("words")} [{paper.CitedShort(part)}]");
        }

        paper.Refused(answer.Each("refused"));
        Working(paper, answer);
    }

    /// <summary>Which results of one sample have really changed.</summary>
    public static void DrawChanges(Paper paper, string sample, JsonElement answer)
    {
        paper.Heading(sample);
        paper.Put(
            Columns,
            [.. answer.Each("changes").Select(c => (IReadOnlyList<string?>)
            [
                c.Text("analyte"),
                Printed(c.At("before")),
                Printed(c.At("after")),
                c.At("difference").Text("value"),
                Figures.Amount(c.At("smallestProvable")),
                c.Text("proved"),
            ])]);
        paper.List(answer.Each("pooled").Where(p => p.Has("value")).Select(p =>
            $"{p.Text("analyte")}: one season, one laboratory, one method. Taken together {Printed(p.At("value"))}, give or take {Figures.Amount(p.At("spread"))}. [{paper.CitedShort(p)}]"));
        paper.Refused(answer.Each("refused"));
        Working(paper, answer);
    }

    /// <summary>Assumptions, each once, and sources.</summary>
    public static void Foot(Paper paper, IReadOnlyList<JsonElement> answers) => paper.Foot(
        answers
            .SelectMany(a => a.Each("assumptions").Concat(a.Each("changes").SelectMany(c => c.Each("assumptions"))))
            .DistinctBy(a => a.Text("text"))
            .Select(a => (a, "")),
        answers);

    private static void Working(Paper paper, JsonElement answer)
    {
        if (answer.Has("working"))
        {
            WorkingScreen.Draw(paper, answer.Each("working"));
        }
    }

    private static string Printed(JsonElement quantity) => $"{quantity.Text("value")} {quantity.Text("unit")}";
}
