using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>Cover crops for a gap on the terminal.</summary>
internal static class CoverScreen
{
    public static void Draw(Paper paper, JsonElement answer)
    {
        paper.Heading("Cover crops that fit, best first");
        if (!answer.Each("choices").Any())
        {
            paper.Paragraph("None here fits; the reasons follow.");
        }

        foreach (var choice in answer.Each("choices"))
        {
            paper.Blank();
            paper.Paragraph($"{choice.Text("name")}: {choice.Text("score")} points. Sow {choice.At("dates").Text("sow")}, end it by {choice.At("dates").Text("killBy")}. [{paper.Cited(choice)}]");
            paper.List([
                .. choice.Each("reasons").Select(r => $"{r.Text("points")}: {r.Text("text")} [{paper.CitedShort(r)}]"),
                Seed(paper, choice.At("seed")),
                .. new[] { "biomass", "nitrogen", "phosphorus" }.Select(part => choice.At(part)).Where(p => p.ValueKind == JsonValueKind.Object).Select(p => $"{p.Text("text")} [{paper.CitedShort(p)}]"),
            ]);
        }

        if (answer.Each("excluded").Any())
        {
            paper.Heading("Left out, and why");
            paper.List(answer.Each("excluded").Select(e => $"{e.Text("coverCrop")}: {string.Join(" ", e.Each("reasons").Select(r => r.Text("text")))}"));
        }

        paper.Foot(answer);
    }

    private static string? Seed(Paper paper, JsonElement seed)
    {
        if (seed.ValueKind != JsonValueKind.Object)
        {
            return null;
        }

        var rate = seed.At("rate");
        var printed = rate.Text("value") ?? $"{rate.Text("low")} to {rate.Text("high")}";
        return $"Seed: {printed} {rate.Text("unit")}{(seed.Has("perBed") ? $", {Figures.Weight(seed.At("perBed"))} for this area" : "")} [{paper.CitedShort(seed)}]";
    }
}
