using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>What fills the exchange, on the terminal: information under the ratings, never among them.</summary>
internal static class CationsScreen
{
    public static void Draw(Paper paper, JsonElement cations)
    {
        if (cations.ValueKind != JsonValueKind.Object)
        {
            return;
        }

        if (cations.Has("refused"))
        {
            paper.List([$"No sum of cations: {cations.At("refused").Text("message")} {cations.At("refused").Text("suggestion")}"]);
            return;
        }

        var acidity = cations.At("acidity");
        var parts = cations.Each("parts").Select(p => $"{p.Text("cation")} {Figures.Share(p.At("saturation"))} %{References(paper, p)}");
        paper.Paragraph($"For information, not a rating: exchange capacity by the sum of cations {Figures.Amount(cations.At("capacity"))}, filled by {string.Join(", ", parts)}, acidity {Figures.Share(acidity.At("saturation"))} % from {acidity.Text("from")}. Weights: {cations.At("weights").Text("title")} [{paper.CitedShort(cations.At("weights"))}].");
        paper.List(cations.Each("warnings").Select(w => $"{w.Text("text")} [{paper.CitedShort(w)}]"));
        paper.List(cations.Each("trials").Select(t => $"{t.Text("text")} [{paper.CitedShort(t)}]"));
        paper.List(cations.Each("assumptions").Select(a => $"{a.Text("text")} [{paper.CitedShort(a)}]"));
        if (cations.Each("working").Any())
        {
            paper.Heading("Working: sum of cations");
            WorkingScreen.Draw(paper, cations.Each("working"));
        }
    }

    private static string References(Paper paper, JsonElement part) => string.Concat(part.Each("references")
        .Select(r => $" (printed for information: {r.Text("low")} to {r.Text("high")} % [{paper.CitedShort(r)}])"));
}
