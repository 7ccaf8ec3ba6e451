using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>A pre-sidedress nitrate test on the terminal: what to do, and what it stands in place of.</summary>
internal static class NitrateTestScreen
{
    public static void Draw(Paper paper, JsonElement nitrate)
    {
        if (nitrate.ValueKind != JsonValueKind.Object)
        {
            return;
        }

        paper.Paragraph($"Nitrate test before sidedressing: {nitrate.Text("action")} [{paper.Cited(nitrate)}]");
        paper.List(
        [
            $"The NO3-N lies in the printed level {nitrate.Text("level")}.",
            Figures.IsZero(nitrate.At("rate").At("perAcre")) ? null : $"The same nitrogen: {Figures.Amount(nitrate.At("rate").At("perAcre"))}, {Figures.Amount(nitrate.At("rate").At("per1000SqFt"))}, {Figures.Amount(nitrate.At("rate").At("perHectare"))}.",
            $"It replaces: {nitrate.Text("replaces")}",
            nitrate.Text("how") is { } how ? $"How: {how}" : null,
        ]);
    }
}
