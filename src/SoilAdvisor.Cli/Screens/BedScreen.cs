using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>One bed on the terminal: what to do first, then why.</summary>
internal static class BedScreen
{
    private const int CoverCropsShown = 3;
    private static readonly string[] Micronutrients = ["B", "Zn", "Mn", "Cu", "Fe", "Mo"];

    public static void Draw(Paper paper, JsonElement bed)
    {
        var crops = string.Join(", then ", bed.Each("crops").Select(c => c.AsText()));
        paper.Heading(crops.Length > 0 ? $"Bed {bed.Text("bed")}: {crops}" : $"Bed {bed.Text("bed")}");
        Spread(paper, bed);
        if (bed.Has("areaShown"))
        {
            paper.Paragraph($"Ground: {bed.Text("areaShown")}, soil test \"{bed.Text("soilTest")}\".");
        }

        if (bed.At("lime").Has("requirement"))
        {
            paper.Paragraph(LimeScreen.Requirement(paper, bed.At("lime").At("requirement")));
        }

        Need(paper, bed);
        NitrogenScreen.Draw(paper, bed.At("nitrogenInTime"));
        paper.List(bed.Each("shortfalls").Select(Shortfall));
        YearsAheadScreen.Draw(paper, bed);
        CoverCrops(paper, bed);
        paper.Refused(bed.Each("refused").Where(IsOfBed));
        paper.List(bed.Each("findings").Where(Blocks).Select(f => Finding(paper, f)));
        paper.List(bed.Each("warnings").Select(w => w.AsText()));
        if (bed.Each("working").Any())
        {
            paper.Heading($"Working of bed {bed.Text("bed")}");
            WorkingScreen.Draw(paper, bed.Each("working"));
        }
    }

    /// <summary>A finding with its rule.</summary>
    public static string Finding(Paper paper, JsonElement finding)
    {
        var record = finding.Text("record") is { } kept ? $" Keep: {kept.TrimEnd('.')}." : "";
        return $"{StateOf(finding.Text("state"))}: {finding.Text("message")}{record} [{finding.Text("section")}; {paper.CitedShort(finding)}]";
    }

    /// <summary>A requirement that is not met, and what would meet it.</summary>
    public static string Shortfall(JsonElement shortfall) =>
        $"{(shortfall.Text("limit") == "ceiling" ? "Over the limit" : "Short")} by {Figures.Amount(shortfall.At("amount"))} of {shortfall.Text("nutrient")}. {shortfall.Text("whatWouldMeetIt")}";

    /// <summary>Whether a finding stops the plan.</summary>
    public static bool Blocks(JsonElement finding) => finding.At("blocks").ValueKind == JsonValueKind.True;

    /// <summary>Whether a refusal concerns the bed, and not its soil test.</summary>
    public static bool IsOfBed(JsonElement refused) => refused.Text("pointer")?.StartsWith("/soilTests", StringComparison.Ordinal) != true;

    private static string StateOf(string? state) => state switch
    {
        "pass" => "Pass",
        "act" => "Act",
        _ => "Not decidable, a record is missing",
    };

    private static void Spread(Paper paper, JsonElement bed)
    {
        var lime = bed.At("lime");
        var stones = lime.Each("choices").Where(c => c.Text("material") == lime.Text("chosen")).Take(1).ToList();
        var materials = bed.Each("materials").ToList();
        if (stones.Count + materials.Count == 0)
        {
            paper.Paragraph(bed.Text("summary") ?? "");
            return;
        }

        var metric = stones.Concat(materials).First().At("perBed").Text("unit") == "kg";
        paper.Put(
            ["spread", "for", "on this bed", "measure", metric ? "kg/ha" : "lb/acre", "cost"],
            [.. stones.Concat(materials).Select(spread => (string?[])
            [
                spread.Text("name"),
                spread.Text("crop") ?? "lime",
                Figures.Weight(spread.At("perBed")),
                Figures.Measure(spread.At("volume")),
                Figures.Number(spread.At("rate").At(metric ? "perHectare" : "perAcre")),
                spread.Has("cost") ? Figures.Money(spread.At("cost")) : "no price",
            ])],
            firstIsWhole: false);
        paper.List(stones.Where(s => s.Each("doses").Count() > 1).Select(s => $"{s.Text("name")}: {s.At("doseLimit").Text("text")}"));
        paper.List([lime.At("sulfur").At("advised").ValueKind == JsonValueKind.True ? lime.At("sulfur").Text("text") : null]);
        paper.List(materials
            .GroupBy(m => (Crop: m.Text("crop"), When: m.Text("when"), Day: m.Text("spreadBy")))
            .Select(g => $"{string.Join("; ", g.Select(m => m.Text("name")))} for {g.Key.Crop}: {(g.Key.Day is { } day ? $"by {day}. " : "")}{g.Key.When}"));
        paper.List([bed.Text("state") == "partly" ? "A part of this bed could not be planned; see below." : null]);
        if (bed.Has("cost"))
        {
            paper.Paragraph($"Cost of what has a price: {Figures.Money(bed.At("cost"))}.");
        }
    }

    private static void Need(Paper paper, JsonElement bed)
    {
        var needs = bed.Each("need").Where(n => !Micronutrients.Contains(n.Text("nutrient"))).ToList();
        var unit = needs.Select(n => n.At("rate").Text("unit")).FirstOrDefault();
        paper.Put(
            ["need", "crop", $"guide's rate, {unit}", "soil test class", "source"],
            [.. needs.Select(need => (string?[])
            [
                need.Text("nutrient"),
                need.Text("crop"),
                $"{Figures.Range(need.At("rate"))}{(need.Text("condition") is { } condition ? $" if {condition}" : "")}",
                need.Text("class"),
                paper.CitedShort(need),
            ])]);
        paper.List(bed.Each("credits").Select(c => $"Credit: {Figures.Range(c.At("amount"))} {c.At("amount").Text("unit")} of {c.Text("nutrient")} from {c.Text("from")}; the low end is counted [{paper.CitedShort(c)}]."));
        var supplied = bed.Each("supplied").Where(s => Figures.IsAtLeastOne(s.At("supplied")) || Figures.IsAtLeastOne(s.At("floor"))).ToList();
        paper.List([
            supplied.Count > 0 ? $"Supplied: {string.Join(", ", supplied.Select(s => $"{NutrientOf(s)} {Figures.Amount(s.At("supplied"))}{Limits(s)}"))}." : null,
            Micronutrient(bed),
        ]);
    }

    private static string? NutrientOf(JsonElement balance) => balance.Text("nutrient") == "CaCO3" ? "neutralising value (as CaCO3)" : balance.Text("nutrient");

    private static string? Micronutrient(JsonElement bed)
    {
        var printed = bed.Each("need").Select(n => n.Text("nutrient")).Where(n => Micronutrients.Contains(n)).Distinct().ToList();
        return printed.Count > 0 ? $"Rates for {string.Join(", ", printed)} are printed for soils shown to be low; see the organic rules below." : null;
    }

    private static string Limits(JsonElement balance) => (balance.Has("floor"), balance.Has("ceiling")) switch
    {
        (true, true) => $" (wanted {Figures.Number(balance.At("floor"))}, at most {Figures.Number(balance.At("ceiling"))})",
        (true, false) => $" (wanted {Figures.Number(balance.At("floor"))})",
        (false, true) => $" (at most {Figures.Number(balance.At("ceiling"))})",
        _ => "",
    };

    private static void CoverCrops(Paper paper, JsonElement bed)
    {
        var selection = bed.At("coverCrops");
        if (selection.ValueKind != JsonValueKind.Object)
        {
            return;
        }

        var gap = selection.At("gap");
        var choices = selection.Each("choices").Take(CoverCropsShown).Select(c => Choice(paper, c)).ToList();
        paper.Paragraph($"Free from {gap.Text("from")} to {gap.Text("to")}, {gap.Text("days")} days. {(choices.Count > 0 ? "Cover crops that fit, best first:" : "No cover crop here fits.")}");
        paper.List(choices);
        paper.List([PhosphorusMoved(paper, bed, selection)]);
    }

    // What a cover crop does for a bed that is short of phosphorus is easily taken for more than it is, so the sentence stands in the plan.
    private static string? PhosphorusMoved(Paper paper, JsonElement bed, JsonElement selection) => selection.Each("choices")
        .Take(CoverCropsShown)
        .Where(c => c.At("phosphorus").ValueKind == JsonValueKind.Object)
        .Where(_ => bed.Each("supplied").Any(s => s.Text("nutrient") == "P2O5" && Figures.IsAtLeastOne(s.At("floor"))))
        .Select(c => $"{c.Text("name")}: {c.At("phosphorus").Text("text")} [{paper.CitedShort(c.At("phosphorus"))}]")
        .FirstOrDefault();

    private static string Choice(Paper paper, JsonElement choice)
    {
        var seed = choice.At("seed").Has("perBed") ? $", {Figures.Weight(choice.At("seed").At("perBed"))} of seed" : "";
        var reason = choice.Each("reasons").FirstOrDefault();
        var why = reason.ValueKind == JsonValueKind.Object ? $" {reason.Text("text")} [{paper.CitedShort(reason)}]" : "";
        return $"{choice.Text("name")}: sow {choice.At("dates").Text("sow")}, end it by {choice.At("dates").Text("killBy")}{seed}.{why}";
    }
}
