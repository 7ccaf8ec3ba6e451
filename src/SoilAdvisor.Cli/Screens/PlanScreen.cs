using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>A plan on the terminal: what the soil tests mean, every bed, what to get, what to mind, where the numbers come from.</summary>
internal static class PlanScreen
{
    private const int BedsNamed = 8;

    public static void Draw(Paper paper, JsonElement plan)
    {
        var beds = plan.Each("beds").ToList();
        Head(paper, plan, beds);
        paper.Suspicions(plan.Each("suspicions"));
        foreach (var tested in beds.Where(b => b.Has("soilTest")).GroupBy(b => b.Text("soilTest")))
        {
            paper.Heading($"Soil test \"{tested.Key}\"");
            RatingScreen.Ratings(paper, tested.First().Each("ratings"));
            IndexScreen.Draw(paper, tested.First());
            CationsScreen.Draw(paper, tested.First().At("cations"));
            paper.Refused(tested.SelectMany(b => b.Each("refused")).Where(r => !BedScreen.IsOfBed(r)).DistinctBy(r => r.Text("message")));
        }

        foreach (var bed in beds)
        {
            BedScreen.Draw(paper, bed);
        }

        Farm(paper, plan);
        MaterialScreen.Draw(paper, plan);
        FieldScreen.Draw(paper, plan.At("fieldWork"));
        SeasonScreen.Season(paper, plan.At("coverSeason"));
        Findings(paper, plan, beds);
        Cautions(paper, beds);
        paper.Foot(Assumptions(plan, beds), plan);
    }

    private static void Head(Paper paper, JsonElement plan, List<JsonElement> beds)
    {
        var guide = plan.At("guide");
        paper.Heading(plan.Text("farm") is { } farm ? $"Soil plan: {farm}" : "Soil plan");
        paper.Paragraph($"Made for {plan.Text("date")}. {beds.Count} {(beds.Count == 1 ? "bed" : "beds")}: {States(beds)}.");
        paper.Paragraph($"Guide: {guide.Text("title")}, {guide.Text("institution")} [{paper.Cited(guide)}]. {plan.Text("guideReason")}");
        paper.Paragraph(plan.Text("rateTable") is { } table
            ? $"Rates: {table}, read with that guide's limits."
            : "Rates: no rate table may be read with this guide's limits, so phosphate and potash needs are refused.");
        paper.Paragraph($"How materials were chosen: {plan.Text("objective")} {plan.At("choice").Text("ended")}");
    }

    private static string States(List<JsonElement> beds) => string.Join(", ", beds
        .GroupBy(b => b.Text("state"))
        .OrderByDescending(g => g.Count())
        .Select(g => $"{g.Count()} {StateOf(g.Key)}"));

    private static string? StateOf(string? state) => state switch
    {
        "planned" => "planned whole",
        "partly" => "planned in part",
        "refused" => "not planned",
        _ => state,
    };

    private static void Farm(Paper paper, JsonElement plan)
    {
        var totals = plan.At("totals");
        paper.Heading("For all beds");
        paper.Put(
            ["material", "needed", "on hand", "to buy", "cost to buy"],
            [.. plan.Each("purchases").Select(Purchase)],
            firstIsWhole: false);
        var choice = plan.At("choice");
        if (choice.Has("toPay"))
        {
            var parts = new[] { ("freight", "deliveries"), ("labour", "carrying it to the beds") }.Where(p => choice.Has(p.Item1)).Select(p => $"{Figures.Money(choice.At(p.Item1))} for {p.Item2}").ToList();
            paper.Paragraph($"To pay in all: {Figures.Money(choice.At("toPay"))}{(parts.Count > 0 ? $", of which {string.Join(" and ", parts)}" : "")}.");
        }

        if (totals.Has("cost"))
        {
            paper.Paragraph($"Cost of all that is spread and has a price, on hand or not: {Figures.Money(totals.At("cost"))}.");
        }

        if (totals.Text("partial") == "yes")
        {
            paper.Paragraph("The totals are not whole: a bed, or a part of one, could not be planned.");
        }

        paper.List(plan.Each("warnings").Select(w => w.AsText()));
    }

    private static string?[] Purchase(JsonElement purchase) =>
    [
        purchase.Text("name"),
        Figures.Weight(purchase.At("needed")),
        Figures.Weight(purchase.At("onHand")),
        purchase.Has("packs") ? $"{Figures.Weight(purchase.At("toBuy"))}: {purchase.Text("packs")} of {Figures.Weight(purchase.At("pack"))}" : Figures.Weight(purchase.At("toBuy")),
        purchase.Has("cost") ? Figures.Money(purchase.At("cost")) : "no price given",
    ];

    // The same finding holds for many beds and is printed once, with the beds.
    private static void Findings(Paper paper, JsonElement plan, List<JsonElement> beds)
    {
        var findings = plan.Each("findings").Select(f => (Finding: f, Bed: (string?)null))
            .Concat(beds.SelectMany(b => b.Each("findings").Select(f => (Finding: f, Bed: b.Text("bed")))))
            .GroupBy(f => BedScreen.Finding(paper, f.Finding))
            .ToList();
        if (findings.Count == 0)
        {
            return;
        }

        paper.Heading("Organic rules held against this plan (your certifier decides)");
        paper.List(findings.Select(f => $"{Concerned(f.Select(x => x.Bed), beds.Count)}{f.Key}"));
    }

    private static void Cautions(Paper paper, List<JsonElement> beds)
    {
        var cautions = beds.SelectMany(b => b.Each("cautions")).DistinctBy(c => c.Text("id")).ToList();
        if (cautions.Count == 0)
        {
            return;
        }

        paper.Heading("Before you spread");
        paper.List(cautions.Select(c => $"{c.Text("text")} [{paper.CitedShort(c)}]"));
    }

    private static IEnumerable<(JsonElement Assumption, string Concerns)> Assumptions(JsonElement plan, List<JsonElement> beds) =>
        plan.Each("assumptions").Concat(plan.At("fieldWork").Each("assumptions")).Select(a => (Assumption: a, Bed: (string?)null))
            .Concat(beds.SelectMany(b => b.Each("assumptions").Select(a => (Assumption: a, Bed: b.Text("bed")))))
            .GroupBy(a => a.Assumption.Text("text"))
            .Select(a => (a.First().Assumption, Concerned(a.Select(x => x.Bed), beds.Count)));

    private static string Concerned(IEnumerable<string?> concerned, int all)
    {
        var beds = concerned.Distinct().ToList();
        return beds.Contains(null) || beds.Count == all ? ""
            : beds.Count > BedsNamed ? $"{beds.Count} beds: "
            : $"Bed {string.Join(", ", beds)}: ";
    }
}
