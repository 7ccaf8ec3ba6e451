using System.Text.Json;
using SoilAdvisor.Cli.Connections;
using Spectre.Console;

namespace SoilAdvisor.Cli.Screens;

/// <summary>Cover crops for a gap on the terminal.</summary>
internal static class CoverScreen
{
    public static void Draw(IAnsiConsole screen, JsonElement answer)
    {
        screen.Heading("Cover crops that fit, best first");
        if (!answer.Each("choices").Any())
        {
            screen.Paragraph("None here fits; the reasons follow.");
        }

        foreach (var choice in answer.Each("choices"))
        {
            screen.WriteLine();
            screen.Paragraph($"{choice.Text("name")}: {choice.Text("score")} points. Sow {choice.At("dates").Text("sow")}, end it by {choice.At("dates").Text("killBy")}. [{Sheets.Cited(choice)}]");
            screen.List([
                .. choice.Each("reasons").Select(r => $"{r.Text("points")}: {r.Text("text")} [{Sheets.CitedShort(r)}]"),
                Seed(choice.At("seed")),
                .. new[] { "biomass", "nitrogen", "phosphorus" }.Select(part => choice.At(part)).Where(p => p.ValueKind == JsonValueKind.Object).Select(p => $"{p.Text("text")} [{Sheets.CitedShort(p)}]"),
            ]);
        }

        if (answer.Each("excluded").Any())
        {
            screen.Heading("Left out, and why");
            screen.List(answer.Each("excluded").Select(e => $"{e.Text("coverCrop")}: {string.Join(" ", e.Each("reasons").Select(r => r.Text("text")))}"));
        }

        screen.Foot(answer);
    }

    private static string? Seed(JsonElement seed)
    {
        if (seed.ValueKind != JsonValueKind.Object)
        {
            return null;
        }

        var rate = seed.At("rate");
        var printed = rate.Text("value") ?? $"{rate.Text("low")} to {rate.Text("high")}";
        return $"Seed: {printed} {rate.Text("unit")}{(seed.Has("perBed") ? $", {Figures.Weight(seed.At("perBed"))} for this area" : "")} [{Sheets.CitedShort(seed)}]";
    }
}
