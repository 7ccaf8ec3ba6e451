using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>Where phosphorus and potassium of a bed are heading, and compost for structure, on the terminal.</summary>
internal static class YearsAheadScreen
{
    public static void Draw(Paper paper, JsonElement bed)
    {
        paper.List([Structure(bed.At("structureDressing"))]);
        var ahead = bed.At("yearsAhead");
        if (ahead.ValueKind != JsonValueKind.Object)
        {
            return;
        }

        paper.List([
            ahead.Has("withoutPhosphorus") ? $"{ahead.At("withoutPhosphorus").Text("text")} [{paper.CitedShort(ahead.At("withoutPhosphorus"))}]" : null,
            Outlook(paper, "Phosphorus", ahead.At("phosphorus")),
            Outlook(paper, "Potassium", ahead.At("potassium")),
        ]);
    }

    private static string? Structure(JsonElement dressing)
    {
        if (dressing.ValueKind != JsonValueKind.Object)
        {
            return null;
        }

        if (dressing.Has("refused"))
        {
            return null;
        }

        var limited = dressing.Text("limitedBy") is { } why ? $" You asked for {Figures.Amount(dressing.At("asked"))}; {why}." : "";
        var years = dressing.Has("yearsOfRemoval") ? $", {Figures.Share(dressing.At("yearsOfRemoval"))} years of harvests" : "";
        var rise = dressing.Has("testRise") ? $"; the test is expected to rise by {Figures.Share(dressing.At("testRise").At("likely"))} {dressing.At("testRise").Text("unit")}" : "";
        return $"Compost for structure lays down {Figures.Range(dressing.At("totalP2O5"))} {dressing.At("totalP2O5").Text("unit")} of total P2O5{years}{rise}.{limited}";
    }

    private static string? Outlook(Paper paper, string name, JsonElement outlook)
    {
        if (outlook.ValueKind != JsonValueKind.Object)
        {
            return null;
        }

        if (outlook.Has("refused"))
        {
            return $"{name} over the years: not projected. {outlook.At("refused").Text("message")} {outlook.At("refused").Text("suggestion")}";
        }

        var years = outlook.Each("years").ToList();
        var (now, then) = (years[0], years[^1]);
        var words = outlook.Each("words").Select(w => $"{w.Text("text")} [{paper.CitedShort(w)}]");
        return $"{name}, now {Figures.Share(now.At("likely"))} {outlook.Text("unit")}, after {then.Text("year")} {(then.Text("year") == "1" ? "season" : "seasons")} {Figures.Share(then.At("likely"))} ({Figures.Share(then.At("low"))} to {Figures.Share(then.At("high"))}). {string.Join(" ", words)}";
    }
}
