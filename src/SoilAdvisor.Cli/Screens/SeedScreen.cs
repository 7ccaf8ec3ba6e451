using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>Seed to weigh out, on the terminal.</summary>
internal static class SeedScreen
{
    public static void Draw(Paper paper, JsonElement answer)
    {
        paper.Heading("Seed to weigh out");
        paper.Put(
            ["cover crop", "share", "pure live seed", "of the bag", "seed", "seeds", "for the area", "cost", "source"],
            [.. answer.Each("species").Select(s => Species(paper, s))],
            firstIsWhole: false);
        if (answer.Each("species").Count() > 1)
        {
            paper.Paragraph($"Together: {Figures.Amount(answer.At("seedRate"))}{(answer.Has("perBed") ? $", for the area {Weighed(answer)}" : "")}. [{paper.CitedShort(answer)}]");
        }

        paper.List(answer.Each("inoculants").Select(i => $"Inoculant: {i.Text("group")}, for {string.Join(" and ", i.Each("coverCrops").Select(c => c.AsText()))} [{paper.CitedShort(i)}]"));
        if (answer.Each("warnings").Any())
        {
            paper.Heading("Do they fit together?");
            paper.List(answer.Each("warnings").Select(w => $"{w.Text("text")} [{paper.CitedShort(w)}]"));
        }

        if (answer.Each("working").Any())
        {
            paper.Heading("Working");
            WorkingScreen.Draw(paper, answer.Each("working"));
        }

        paper.Foot(answer);
    }

    private static string?[] Species(Paper paper, JsonElement species) =>
    [
        species.Text("name"),
        species.Has("sharePercent") ? $"{species.Text("sharePercent")} %" : "",
        Figures.Amount(species.At("pureLiveRate")),
        $"{species.Text("pureLivePercent")} %",
        Figures.Amount(species.At("seedRate")),
        species.Has("seedsPerSquareFoot") ? Figures.Amount(species.At("seedsPerSquareFoot")) : "",
        species.Has("perBed") ? Weighed(species) : "",
        species.Has("cost") ? Figures.Money(species.At("cost")) : "",
        paper.CitedShort(species),
    ];

    private static string Weighed(JsonElement part) => $"{Figures.Amount(part.At("perBedOunces"))} ({Figures.Amount(part.At("perBedGrams"))})";
}
