using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>Nitrogen through the season: what has come by a day and what is wanted by then, and the side-dressings.</summary>
internal static class NitrogenScreen
{
    public static void Draw(Paper paper, JsonElement nitrogen)
    {
        if (nitrogen.ValueKind != JsonValueKind.Object)
        {
            return;
        }

        foreach (var planting in nitrogen.Each("plantings").Where(p => Figures.Range(p.At("need")) != "0"))
        {
            var days = planting.Each("days").ToList();
            paper.Put(
                [$"nitrogen, {planting.Text("crop")}", "what", $"released, {days[0].At("released").Text("unit")}", "wanted by then"],
                [.. days.Select(d => (string?[])[d.Text("date") ?? AfterPlanting(d), d.Text("what"), Figures.Range(d.At("released")), Figures.Range(d.At("wanted"))])]);
            paper.List(planting.Each("dressings").Where(d => d.Text("timing") != "base" && d.Each("materials").Any()).Select(Sidedressing));
            paper.List([TiedUp(planting), Said(paper, planting.At("nitrateTest"))]);
        }
    }

    private static string AfterPlanting(JsonElement day) => day.Has("daysAfterPlanting") ? $"day {day.Text("daysAfterPlanting")}" : "";

    private static string Sidedressing(JsonElement dressing)
    {
        var when = dressing.Has("from") ? $"{dressing.Text("from")} to {dressing.Text("to")}, {dressing.Text("when")}" : dressing.Text("when");
        return $"Of this, keep for later ({when}): {string.Join("; ", dressing.Each("materials").Select(m => $"{m.Text("name")} {Figures.Weight(m.At("perBed"))}"))}.";
    }

    private static string? TiedUp(JsonElement planting) => planting.Has("tiedUp")
        ? $"Tied up by material rich in carbon: {Figures.Range(planting.At("tiedUp"))} {planting.At("tiedUp").Text("unit")} of nitrogen."
        : null;

    private static string? Said(Paper paper, JsonElement said) => said.ValueKind == JsonValueKind.Object ? $"{said.Text("text")} [{paper.CitedShort(said)}]" : null;
}
