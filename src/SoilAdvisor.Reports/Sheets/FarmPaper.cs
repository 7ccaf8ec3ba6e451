using System.Globalization;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Paper;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Sheets;

/// <summary>Lays out a whole plan: head, farm sheet, bed sheets, who decides.</summary>
internal static class FarmPaper
{
    public static ReportPaper Of(FarmPlan plan, ReportUnits units)
    {
        var measures = new Measures(units);
        var shared = SharedAssumptions(plan);
        var title = string.IsNullOrWhiteSpace(plan.Farm) ? "Soil plan" : $"Soil plan: {plan.Farm}";
        return new ReportPaper(title,
        [
            .. Head(plan, title),
            .. Suspicions(plan),
            .. FarmSheet.Of(plan, measures),
            .. shared.Count == 0 ? [] : new Block[] { new Heading(3, "Taken as true for every bed"), Said(shared) },
            .. RatingSection.Of(plan),
            .. IndexSection.Of(plan),
            .. CationSection.Of(plan),
            new Heading(2, "The beds", "beds"),
            .. plan.Beds.SelectMany((b, i) => BedSheet.Of(b, i, shared, measures)),
            .. WhoDecides(plan),
        ]);
    }

    private static IEnumerable<Block> Head(FarmPlan plan, string title)
    {
        yield return new Heading(1, title);
        yield return new Paragraph(
            new Sentence($"Made for {Measures.Day(plan.Date)}."),
            new Sentence($"{Count(plan.Beds.Count, "bed")}: {States(plan)}.", Citation.OurArithmetic));
        yield return new Paragraph(
            Sentence.Bold("Guide:"),
            new Sentence($"{plan.Guide.Title} ({plan.Guide.Institution}).", plan.Guide.Source),
            new Sentence(TradeWords.Sentence(plan.GuideReason), Citation.OurJudgement));
        yield return plan.RateTable is { } table
            ? new Paragraph(Sentence.Bold("Rates:"), new Sentence($"{table.Title} ({table.Institution}), read with that guide's limits.", table.Source))
            : new Paragraph(Sentence.Bold("Rates:"), new Sentence("No rate table may be read with this guide's limits; phosphate and potash needs are refused below, with what to do."));
        if (plan.OtherGuides.Count > 0)
        {
            yield return new Paragraph(
                Sentence.Bold("Other guides that cover these tests:"),
                new Sentence($"{string.Join(", ", plan.OtherGuides)}. Their limits differ, so the same soil can fall into another class there."));
        }

        yield return new Paragraph(Sentence.Bold("How materials were chosen:"), new Sentence(TradeWords.Sentence(plan.Objective), Citation.OurJudgement), new Sentence(TradeWords.Sentence(plan.Choice.Ended), Citation.OurArithmetic));
        yield return new Contents([("Farm sheet", FarmSheet.Anchor), .. RatingSection.IsShown(plan) ? [("The soil tests", RatingSection.Anchor)] : Array.Empty<(string, string)>(), .. plan.Beds.Select((b, i) => ($"Bed {b.Bed.Id}", BedSheet.Anchor(i)))]);
    }

    // Said before any number is used: a mixed-up unit makes every rate below it wrong.
    private static IEnumerable<Block> Suspicions(FarmPlan plan)
    {
        if (plan.Suspicions.Count == 0)
        {
            yield break;
        }

        yield return new Heading(2, "Look at these numbers first");
        yield return new Paragraph(new Sentence("They can be right, and the plan takes them as they are. If one is a mix-up, correct it and make the plan again."));
        yield return new Bullets([.. plan.Suspicions.Select(s => new Paragraph(
            Sentence.Bold($"{s.SoilTest}:"),
            new Sentence($"{TradeWords.Sentence(s.Suspicion.Message)} {TradeWords.Sentence(s.Suspicion.Suggestion)}", s.Suspicion.Source)))]);
    }

    // Every number of this paragraph is arithmetic on the plan itself; the law is not ours to state.
    private static IEnumerable<Block> WhoDecides(FarmPlan plan)
    {
        yield return new Heading(2, "Who decides");
        yield return new Paragraph(
            new Sentence($"This report does arithmetic on {(plan.Beds.Count == 1 ? "a soil test" : "soil tests")} and published tables. It does not decide."),
            new Sentence("Local and state nutrient, manure and water law comes first. Your certifier decides what is allowed on certified ground. Licensed advisers decide where a licence is needed."),
            new Sentence("A soil test does not see drainage, compaction, disease or last year's weather: dig a hole, look, and change the plan where the ground disagrees."));
    }

    private static string States(FarmPlan plan) =>
        string.Join(", ", plan.Beds.GroupBy(b => b.State).OrderByDescending(g => g.Key).Select(g => $"{g.Count().ToString(CultureInfo.InvariantCulture)} {TradeWords.Of(g.Key)}"));

    private static string Count(int number, string what) => $"{number.ToString(CultureInfo.InvariantCulture)} {what}{(number == 1 ? "" : "s")}";

    // What holds for every bed is said once.
    private static IReadOnlyList<Assumption> SharedAssumptions(FarmPlan plan)
    {
        var farm = plan.Assumptions.Distinct();
        if (plan.Beds.Count < 2)
        {
            return [.. farm];
        }

        var everywhere = plan.Beds.Select(b => BedSheet.Assumptions(b).ToHashSet()).Aggregate((a, b) => [.. a.Intersect(b)]);
        return [.. farm.Concat(BedSheet.Assumptions(plan.Beds[0]).Where(everywhere.Contains)).Distinct()];
    }

    internal static Bullets Said(IEnumerable<Assumption> assumptions) =>
        new([.. assumptions.Select(a => new Paragraph(new Sentence(TradeWords.Sentence(a.Text), a.Source)))]);
}
