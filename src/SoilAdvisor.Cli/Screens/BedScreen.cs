using System.Text.Json;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Files;
using Spectre.Console;

namespace SoilAdvisor.Cli.Screens;

/// <summary>One bed on the terminal: what to do first, then why.</summary>
internal static class BedScreen
{
    private const int CoverCropsShown = 3;

    public static void Draw(IAnsiConsole screen, JsonElement bed, Places places)
    {
        screen.Heading($"Bed {bed.Text("bed")}: {string.Join(", then ", bed.Each("crops").Select(c => c.AsText()))}".TrimEnd(':', ' '));
        screen.Paragraph(bed.Text("summary") ?? "");
        if (bed.Has("areaShown"))
        {
            screen.Paragraph($"Ground: {bed.Text("areaShown")}, soil test \"{bed.Text("soilTest")}\".");
        }

        Spread(screen, bed);
        Need(screen, bed);
        screen.List(bed.Each("shortfalls").Select(Shortfall));
        CoverCrops(screen, bed.At("coverCrops"));
        screen.Refused(bed.Each("refused"));
        screen.List(bed.Each("findings").Select(Finding));
        screen.List(bed.Each("warnings").Select(w => w.AsText()));
        if (bed.Each("working").Any())
        {
            screen.Heading($"Working of bed {bed.Text("bed")}");
            WorkingScreen.Draw(screen, bed.Each("working"), places);
        }
    }

    /// <summary>A finding with its rule.</summary>
    public static string Finding(JsonElement finding)
    {
        var record = finding.Text("record") is { } kept ? $" Keep: {kept}" : "";
        return $"{StateOf(finding.Text("state"))}: {finding.Text("message")}{record} [{finding.Text("standard")} {finding.Text("section")}]";
    }

    /// <summary>A requirement that is not met, and what would meet it.</summary>
    public static string Shortfall(JsonElement shortfall) =>
        $"{(shortfall.Text("limit") == "ceiling" ? "Over the limit" : "Short")} by {Figures.Amount(shortfall.At("amount"))} of {shortfall.Text("nutrient")}. {shortfall.Text("whatWouldMeetIt")}";

    private static string StateOf(string? state) => state switch
    {
        "pass" => "Pass",
        "act" => "Act",
        _ => "Not decidable, a record is missing",
    };

    private static void Spread(IAnsiConsole screen, JsonElement bed)
    {
        var lime = bed.At("lime");
        var chosen = lime.Each("choices").FirstOrDefault(c => c.Text("material") == lime.Text("chosen"));
        if (chosen.ValueKind == JsonValueKind.Undefined && !bed.Each("materials").Any())
        {
            return;
        }

        var table = Sheets.Table("spread", "on this bed", "measure", "rate", "cost", "when");
        if (chosen.ValueKind != JsonValueKind.Undefined)
        {
            var doses = chosen.Each("doses").Count();
            table.Row(
                chosen.Text("name"),
                Figures.Weight(chosen.At("perBed")),
                Figures.Measure(chosen.At("volume")),
                Rate(chosen.At("rate")),
                Cost(chosen),
                doses > 1 ? $"in {doses} doses" : "one dose, worked in");
        }

        foreach (var material in bed.Each("materials"))
        {
            table.Row(
                material.Text("name"),
                Figures.Weight(material.At("perBed")),
                Figures.Measure(material.At("volume")),
                Rate(material.At("rate")),
                Cost(material),
                $"{material.Text("crop")}: {material.Text("when")}{(material.Text("spreadBy") is { } day ? $", by {day}" : "")}");
        }

        screen.Write(table);
        if (bed.Has("cost"))
        {
            screen.Paragraph($"Cost of what has a price: {Figures.Money(bed.At("cost"))}.");
        }
    }

    // The unit of the bed's weight tells which system the reader asked for.
    private static string Rate(JsonElement rate) => Figures.Amount(rate.At("perBed").Text("unit") == "kg" ? rate.At("perHectare") : rate.At("perAcre"));

    private static string Cost(JsonElement spread) => spread.Has("cost") ? Figures.Money(spread.At("cost")) : "no price";

    private static void Need(IAnsiConsole screen, JsonElement bed)
    {
        var lime = bed.At("lime").At("requirement");
        if (lime.ValueKind == JsonValueKind.Object)
        {
            screen.Paragraph($"Lime: pH {lime.Text("soilPh")}, target {lime.Text("targetPh")}, so {Figures.Amount(lime)} of {lime.Text("basis")} for {Figures.Amount(lime.At("depth"))} [{lime.Text("method")}; {Sheets.CitedShort(lime)}].");
        }

        if (!bed.Each("need").Any())
        {
            return;
        }

        var unit = bed.Each("need").First().At("rate").Text("unit");
        var table = Sheets.Table("need", "crop", $"guide's rate, {unit}", "soil test class", "source");
        foreach (var need in bed.Each("need"))
        {
            table.Row(
                need.Text("nutrient"),
                need.Text("crop"),
                $"{Figures.Range(need.At("rate"))}{(need.Text("condition") is { } condition ? $" if {condition}" : "")}",
                need.Text("class"),
                Sheets.CitedShort(need));
        }

        screen.Write(table);
        screen.List(bed.Each("credits").Select(c => $"Credit: {Figures.Range(c.At("amount"))} {c.At("amount").Text("unit")} of {c.Text("nutrient")} from {c.Text("from")}; the low end is counted. [{Sheets.CitedShort(c)}]"));
        screen.List([Supplied(bed)]);
    }

    private static string? Supplied(JsonElement bed)
    {
        var supplied = bed.Each("supplied").Where(b => Figures.Amount(b.At("supplied")) is not ("" or "0 lb/acre" or "0 kg/ha")).ToList();
        return supplied.Count == 0 ? null : $"What is spread supplies: {string.Join(", ", supplied.Select(b => $"{b.Text("nutrient")} {Figures.Amount(b.At("supplied"))}{Limits(b)}"))}.";
    }

    private static string Limits(JsonElement balance) => (balance.Has("floor"), balance.Has("ceiling")) switch
    {
        (true, true) => $" (wanted {Figures.Amount(balance.At("floor"))}, at most {Figures.Amount(balance.At("ceiling"))})",
        (true, false) => $" (wanted {Figures.Amount(balance.At("floor"))})",
        (false, true) => $" (at most {Figures.Amount(balance.At("ceiling"))})",
        _ => "",
    };

    private static void CoverCrops(IAnsiConsole screen, JsonElement selection)
    {
        if (selection.ValueKind != JsonValueKind.Object)
        {
            return;
        }

        var gap = selection.At("gap");
        var choices = selection.Each("choices").Take(CoverCropsShown).Select(Choice).ToList();
        screen.Paragraph($"Free from {gap.Text("from")} to {gap.Text("to")}, {gap.Text("days")} days. {(choices.Count > 0 ? "Cover crops that fit, best first:" : "No cover crop here fits.")}");
        screen.List(choices);
    }

    private static string Choice(JsonElement choice)
    {
        var seed = choice.At("seed").Has("perBed") ? $", {Figures.Weight(choice.At("seed").At("perBed"))} of seed" : "";
        var reason = choice.Each("reasons").Select(r => r.Text("text")).FirstOrDefault();
        return $"{choice.Text("name")}: sow {choice.At("dates").Text("sow")}, end it by {choice.At("dates").Text("killBy")}{seed}. {reason} [{Sheets.CitedShort(choice)}]";
    }
}
