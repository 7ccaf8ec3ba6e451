using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>How to lower a pH on the terminal: the answer, the published rules side by side, the doses.</summary>
internal static class SulfurScreen
{
    public static void Draw(Paper paper, JsonElement sulfur)
    {
        if (sulfur.ValueKind != JsonValueKind.Object)
        {
            return;
        }

        paper.Paragraph($"{sulfur.Text("text")} [{paper.CitedShort(sulfur)}]");
        if (sulfur.At("advised").ValueKind != JsonValueKind.True)
        {
            paper.List(sulfur.Each("cautions").Select(c => c.AsText()));
            return;
        }

        paper.Put(
            ["sulfur rule", "lb/acre", "lb/1000 sq ft", "from pH", "to pH"],
            [.. sulfur.Each("rules").Where(r => r.Has("low")).Select(r => (string?[])[r.Text("title"), Range(r, "perAcre"), Range(r, "per1000SqFt"), r.Text("fromPh"), r.Text("toPh")])],
            firstIsWhole: false);
        paper.List(sulfur.Each("rules").Select(r => $"{r.Text("title")}: {r.Text("text")} [{paper.CitedShort(r)}]"));
        paper.List(sulfur.Each("doses").Select((d, i) => $"Dose {(i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture)}: {Figures.Amount(d)}{(d.Has("perBed") ? $", {Figures.Weight(d.At("perBed"))} on this area" : "")}{When(d, i)}."));
        paper.List([$"Test again after {sulfur.Text("retestMonths")} months{(sulfur.Text("retest") is { } retest ? $", from {retest}" : "")}."]);
        if (sulfur.Has("organic"))
        {
            paper.List([$"Organic rule {sulfur.At("organic").Text("section")}: {sulfur.At("organic").Text("text")} [{paper.CitedShort(sulfur.At("organic"))}]"]);
        }

        paper.List(sulfur.Each("cautions").Select(c => c.AsText()));
    }

    private static string Range(JsonElement rule, string way)
    {
        var (low, high) = (Figures.Number(rule.At("low").At(way)), Figures.Number(rule.At("high").At(way)));
        return low == high ? low : $"{low} to {high}";
    }

    private static string When(JsonElement dose, int index) => dose.Text("date") is { } day ? $", from {day}" : index == 0 ? "" : $", after {dose.Text("monthsFrom")} months and a new test";
}
