using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>Indices and limits of law on the terminal, apart from the classes of the readings.</summary>
internal static class IndexScreen
{
    public static void Draw(Paper paper, JsonElement rated)
    {
        var indices = rated.Each("indices").ToList();
        paper.Put(
            ["index", "value", "class", "we read it as", "limits of the class", "source"],
            [.. indices.Where(i => i.Has("class")).Select(i => (string?[])
            [
                i.Text("title"),
                Figures.Amount(i.At("value")),
                i.Text("class"),
                i.Text("standing"),
                RatingScreen.Limits(i.At("scale").Each("classes").FirstOrDefault(c => c.Text("class") == i.Text("class")), i.At("scale").Text("unit")),
                paper.CitedShort(i),
            ])],
            firstIsWhole: false);
        paper.List(indices.Where(i => i.Has("refused")).Select(i => $"No {i.Text("title")}: {i.At("refused").Text("message")} {i.At("refused").Text("suggestion")}"));
        paper.List(rated.Each("ceilings").Select(c => $"Limit of law, not a class: {c.Text("message")} [{paper.CitedShort(c)}]"));
    }
}
