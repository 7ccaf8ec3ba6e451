using System.Globalization;
using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>A season of cover crops on the terminal.</summary>
internal static class SeasonScreen
{
    public static void Draw(Paper paper, JsonElement answer)
    {
        Season(paper, answer.At("coverSeason"));
        paper.Refused(answer.Each("refused"));
        paper.Foot(answer);
    }

    /// <summary>The season itself; nothing where none was asked.</summary>
    public static void Season(Paper paper, JsonElement season)
    {
        if (season.ValueKind != JsonValueKind.Object)
        {
            return;
        }

        paper.Heading("Cover crops for the season");
        paper.Paragraph($"{season.Text("points")} points together, {season.Text("taken")} taken off for the number of species. {season.Text("ended")} [{paper.CitedShort(season)}]");
        paper.Put(["bed", "cover crop", "points", "sow", "mow", "end by", "plant", "seed"], [.. season.Each("stands").Select(Stand)]);
        paper.List(season.Each("stands").Where(s => s.Has("said")).Select(s => $"Bed {s.Text("bed")}: {s.Text("said")}"));
        paper.Heading("Seed");
        paper.Put(["seed of", "beds", "needed", "on hand", "to buy", "cost"], [.. season.Each("seed").Select(Seed)], firstIsWhole: false);
    }

    private static string?[] Stand(JsonElement stand) =>
    [
        stand.Text("bed"),
        stand.Text("name") ?? "bare",
        stand.Has("name") ? stand.Text("points") : "",
        Day(stand, "sow"),
        Day(stand, "mow"),
        Day(stand, "kill"),
        Day(stand, "plant"),
        stand.Has("seed") ? Figures.Weight(stand.At("seed")) : "",
    ];

    // Short enough for eight columns on a narrow screen, and still one day only.
    private static string? Day(JsonElement stand, string work) => stand.Each("tasks")
        .Where(t => t.Text("work") == work)
        .Select(t => DateOnly.ParseExact(t.Text("day")!, "yyyy-MM-dd", CultureInfo.InvariantCulture).ToString("d MMM yy", CultureInfo.InvariantCulture))
        .FirstOrDefault();

    private static string?[] Seed(JsonElement seed) =>
    [
        seed.Text("name"),
        seed.Text("beds"),
        seed.Has("needed") ? Figures.Weight(seed.At("needed")) : "no rate held",
        Figures.Weight(seed.At("onHand")),
        seed.Has("packs") ? $"{Figures.Weight(seed.At("toBuy"))}: {seed.Text("packs")} of {Figures.Weight(seed.At("pack"))}" : Figures.Weight(seed.At("toBuy")),
        seed.Has("cost") ? Figures.Money(seed.At("cost")) : "",
    ];
}
