using System.Globalization;
using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>How the plan is carried out: passes in order with what to measure out, mixes, strips, one check.</summary>
internal static class FieldScreen
{
    // A third rate of one material is in proportion to the first two.
    private const int RatesShown = 2;

    public static void Draw(Paper paper, JsonElement work)
    {
        if (work.ValueKind != JsonValueKind.Object)
        {
            return;
        }

        paper.Heading("In the field, in this order");
        paper.Put(
            ["by", "material", "bed", "measure out", "rounding"],
            [.. work.Each("passes").SelectMany(p => p.Each("beds").Select((b, i) => Row(p, b, i == 0)))]);
        paper.List(work.Each("passes").SelectMany(p => p.Each("rules").Select(r => $"{p.Text("name")}: {r.AsText()}")).Distinct(StringComparer.Ordinal));
        Mixes(paper, work);
        Strips(paper, work);
        if (work.Has("check"))
        {
            var check = work.At("check");
            paper.Heading("One check worth making");
            paper.Paragraph($"{check.Text("what")} {check.Text("why")} [{paper.CitedShort(check)}]");
        }
    }

    private static string?[] Row(JsonElement pass, JsonElement bed, bool first) =>
    [
        first ? pass.Text("spreadBy") ?? "no date known" : "\"",
        first ? pass.Has("dose") ? $"{pass.Text("name")}, {pass.Text("dose")}" : pass.Text("name") : "\"",
        bed.Text("bed"),
        MeasuredOut(bed),
        bed.Has("heldBy") ? $"{Figures.Share(bed.At("changePercent"))} %, held down by {bed.Text("heldBy")}" : $"{Figures.Share(bed.At("changePercent"))} %",
    ];

    private static string MeasuredOut(JsonElement bed)
    {
        var weight = Figures.Weight(bed.At("measured"));
        return bed.Text("how") switch
        {
            "by-volume" => $"{string.Join(" and ", new[] { Counted(bed, "buckets", "bucket"), Counted(bed, "scoops", "scoop") }.OfType<string>())}: {weight}",
            "exactly" => $"weigh {weight}, on a finer scale",
            _ => $"weigh {weight}",
        };
    }

    private static string? Counted(JsonElement bed, string member, string name) =>
        bed.Has(member) && bed.At(member).TryGetDecimal(out var number) && number > 0
            ? string.Create(CultureInfo.InvariantCulture, $"{number:0.##} {name}{(number > 1 ? "s" : "")}")
            : null;

    private static void Mixes(Paper paper, JsonElement work)
    {
        if (!work.Each("mixes").Any() && !work.Each("notMixed").Any())
        {
            return;
        }

        paper.Heading("Mixing sheet: mix these, or spread them one by one");
        paper.Put(
            ["beds", "into the batch", "each bed gets"],
            [.. work.Each("mixes").Select(m => new[]
            {
                string.Join(", ", m.Each("portions").Select(p => p.Text("bed"))),
                string.Join(", ", m.Each("parts").Select(p => $"{Figures.Weight(p.At("weight"))} {p.Text("name")}")),
                string.Join(", ", m.Each("portions").Select(p => $"{p.Text("bed")}: {Figures.Weight(p.At("weight"))}")),
            })],
            firstIsWhole: false);
        paper.List(work.Each("notMixed").Select(n => n.AsText()));
    }

    private static void Strips(Paper paper, JsonElement work)
    {
        var measures = work.At("measures");
        paper.Heading($"Try a strip of {Figures.Amount(measures.At("strip"))} by a swath of {Figures.Amount(measures.At("swath"))}");
        paper.Put(
            ["material", "rate wanted", "on the strip", "each unit of weight caught means"],
            [.. work.Each("strips").GroupBy(s => s.Text("material")).SelectMany(g => g.Take(RatesShown)).Select(s => new[]
            {
                s.Text("name"), Figures.Amount(s.At("rate").At("perAcre")), Figures.Weight(s.At("target")), $"{Figures.Amount(s.At("ratePerPound"))} for each lb",
            })],
            firstIsWhole: false);
        paper.Paragraph("Weigh what the strip got. Multiply the flow by the rate wanted over the rate put down, or divide your pace by it, and try again.");
    }
}
