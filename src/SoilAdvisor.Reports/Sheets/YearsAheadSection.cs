using System.Globalization;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Agronomy.YearsAhead;
using SoilAdvisor.Reports.Paper;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Sheets;

/// <summary>Compost for structure with its phosphorus cost, and the soil tests of later years with their band.</summary>
internal static class YearsAheadSection
{
    private const int InFull = 5;

    public static IEnumerable<Block> Of(BedPlan bed, Measures measures) => [.. Structure(bed, measures), .. Years(bed, measures)];

    private static IEnumerable<Block> Structure(BedPlan bed, Measures measures)
    {
        if (bed.StructureDressing is not { } asked)
        {
            yield break;
        }

        yield return new Heading(4, "Compost for structure");
        if (!asked.TryGet(out var dressing, out var reason))
        {
            yield return new Paragraph(
                new Sentence(TradeWords.Sentence(reason.Message), Citation.OurJudgement), Sentence.Bold("What to do:"), new Sentence(TradeWords.Sentence(reason.Suggestion), Citation.OurJudgement));
            yield break;
        }

        var limited = dressing.LimitedBy is { } why ? [new Sentence($"You asked for {measures.Rate(dressing.Asked)}; {why}.", Citation.OurJudgement)] : Array.Empty<Sentence>();
        yield return new Paragraph([Sentence.Bold($"Spread {measures.Rate(dressing.Rate)} of {dressing.Offered.Material.Name}: {measures.Weight(dressing.Rate.On(bed.Bed.Area))} on this bed.", Citation.OurArithmetic), .. limited]);
        yield return new SourcedTable(
            ["Its phosphorus cost", "Amount"],
            [
                Row("total phosphate (P2O5) it lays down", measures.Range(dressing.Phosphate.Amount, dressing.PhosphateHigh.Amount)),
                .. dressing.YearsOfRemoval is { } years ? [Row("years of harvests that take as much away", Figure.Short(years))] : Array.Empty<SourcedRow>(),
                .. dressing.Rise is { } rise ? [Row("expected rise of the phosphorus test", $"{Figure.Short(rise.Likely.Value)} mg/kg ({Figure.Short(rise.Low.Value)} to {Figure.Short(rise.High.Value)})")] : Array.Empty<SourcedRow>(),
                Row("nitrogen (N) of the season, counted in the plan", measures.Range(dressing.Nitrogen, MassPerArea.Larger(dressing.Nitrogen, dressing.NitrogenHigh))),
            ]);

        static SourcedRow Row(string what, string amount) => new([what, amount], [Citation.OurArithmetic]);
    }

    private static IEnumerable<Block> Years(BedPlan bed, Measures measures)
    {
        if (bed.YearsAhead is not { } plan)
        {
            yield break;
        }

        yield return new Heading(4, "Phosphorus and potassium over the years");
        if (plan.WithoutPhosphorus is { } without)
        {
            yield return new Paragraph(Sentence.Bold(without.Value, without.Source));
        }

        var shown = new[] { ("Phosphorus", plan.Phosphorus), ("Potassium", plan.Potassium) }.Where(n => n.Item2 is not null).Select(n => (Name: n.Item1, Answer: n.Item2!.Value)).ToList();
        var given = shown.Where(n => n.Answer.IsGiven).Select(n => (n.Name, Outlook: n.Answer.Value)).ToList();
        if (given.Count > 0)
        {
            yield return Table(given, 0, InFull);
        }

        yield return new Bullets([.. shown.Select(n => Said(n.Name, n.Answer))]);
        if (given.Count > 0 && plan.Years > InFull)
        {
            yield return new Fold(string.Create(CultureInfo.InvariantCulture, $"Years {InFull + 1} to {plan.Years}"), 5, [Table(given, InFull + 1, plan.Years)]);
        }

        if (plan.HoldRates.Count > 0)
        {
            yield return new Fold("The rate at which phosphorus stops climbing", 5, [.. Holds(plan, measures)]);
        }
    }

    private static SourcedTable Table(IReadOnlyList<(string Name, NutrientOutlook Outlook)> given, int from, int to) => new(
        ["After", .. given.Select(g => $"{g.Name} ({Words.Extractants.IdOf(g.Outlook.Projection.Test.Extractant)}), mg/kg"), .. given.Select(g => $"{g.Name}, four times in five")],
        [
            .. given[0].Outlook.Projection.Years.Where(y => y.Year >= from && y.Year <= to).Select(y => new SourcedRow(
                [
                    y.Year switch { 0 => "now", 1 => "1 season", var seasons => string.Create(CultureInfo.InvariantCulture, $"{seasons} seasons") },
                    .. given.Select(g => (Cell)Figure.Short(g.Outlook.Projection.Years[y.Year].Likely.MilligramsPerKilogram)),
                    .. given.Select(g => (Cell)$"{Figure.Short(g.Outlook.Projection.Years[y.Year].Low.MilligramsPerKilogram)} to {Figure.Short(g.Outlook.Projection.Years[y.Year].High.MilligramsPerKilogram)}"),
                ],
                [Citation.OurArithmetic])),
        ]);

    private static Paragraph Said(string name, Answer<NutrientOutlook> answer) => answer.TryGet(out var outlook, out var reason)
        ? new Paragraph([Sentence.Bold(name + ":"), .. outlook.Words.Select(w => new Sentence(TradeWords.Sentence(w.Value), w.Source))])
        : new Paragraph(Sentence.Bold(name + ":"), new Sentence("not projected. " + TradeWords.Sentence(reason.Message), Citation.OurJudgement), new Sentence(TradeWords.Sentence(reason.Suggestion), Citation.OurJudgement));

    private static IEnumerable<Block> Holds(YearsAheadPlan plan, Measures measures)
    {
        yield return new Paragraph(new Sentence("Each rate brings as much phosphate (P2O5) as the harvests of a year take away, when nothing else brings any. More makes the test climb. Buy the nitrogen that is missing in materials with little phosphorus.", Citation.OurArithmetic));
        yield return new SourcedTable(
            ["Material", "Rate a year", "By richest and poorest analysis", "Nitrogen at that rate", "Note"],
            [.. plan.HoldRates.Select(h => new SourcedRow(
                [
                    h.Offered.Material.Name, measures.Rate(h.Rate), measures.Range(h.Low, h.High), measures.Range(h.Nitrogen, MassPerArea.Larger(h.Nitrogen, h.NitrogenHigh)),
                    h.AboveLargestSingleRate ? "more than its largest single rate" : "",
                ],
                [Citation.OurArithmetic]))]);
    }
}
