using System.Globalization;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Paper;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Sheets;

/// <summary>The sheet to carry: what to buy, and what to spread on each bed in order.</summary>
internal static class FarmSheet
{
    public const string Anchor = "farm-sheet";

    public static IEnumerable<Block> Of(FarmPlan plan, Measures measures)
    {
        yield return new Heading(2, "Farm sheet", Anchor);
        if (plan.Partial)
        {
            yield return new Paragraph(Sentence.Bold("These totals are not complete:"), new Sentence("what a bed was refused is not in them. Each bed below says what is missing and what to do."));
        }

        if (plan.Warnings.Count > 0)
        {
            yield return new Bullets([.. plan.Warnings.Select(w => new Paragraph(new Sentence(TradeWords.Sentence(w), Citation.OurJudgement)))]);
        }

        yield return new Heading(3, "Shopping list");
        yield return plan.Purchases.Count == 0 ? new Paragraph(new Sentence("Nothing to buy.")) : ShoppingList(plan, measures);
        foreach (var block in MaterialSection.Of(plan, measures).Concat(FieldSection.Of(plan, measures)))
        {
            yield return block;
        }

        yield return new Heading(3, "What to spread, bed by bed");
        yield return new Paragraph(
            new Sentence("Rates are per acre, hectare and 1000 square feet of ground that is actually spread.", Citation.OurArithmetic),
            new Sentence("Weights are for the whole bed. Where no density is published the measure says \"weigh it\"."));
        foreach (var (bed, index) in plan.Beds.Select((b, i) => (b, i)))
        {
            yield return new Heading(4, $"Bed {bed.Bed.Id}");
            var steps = SpreadingStep.Of(bed);
            yield return steps.Count > 0
                ? Steps(steps, measures)
                : new Paragraph(new Sentence(bed.State == BedState.Refused ? "Not planned: see the bed's own sheet for why and what to do." : TradeWords.Sentence(bed.Summary), Citation.OurArithmetic));
        }

        var cautions = plan.Beds.SelectMany(b => b.Cautions).DistinctBy(c => c.Id).ToList();
        if (cautions.Count > 0)
        {
            yield return new Heading(3, "Before you open a bag");
            yield return new Bullets([.. cautions.Select(c => new Paragraph(new Sentence(TradeWords.Sentence(c.Text), c.Source)))]);
        }

        foreach (var block in SeasonSection.Of(plan, measures))
        {
            yield return block;
        }

        if (plan.Findings.Count > 0)
        {
            yield return new Heading(3, "Organic findings for the farm");
            yield return FindingTable.Of(plan.Findings);
        }
    }

    private static SourcedTable ShoppingList(FarmPlan plan, Measures measures)
    {
        var rows = plan.Purchases.Select(p => new SourcedRow(
            [
                p.Offered.Material.Name,
                measures.Weight(p.Needed),
                p.OnHand is { } stock ? measures.Weight(stock) : "not said",
                p.ToBuy.Kilograms > 0 ? Cell.Of([measures.Weight(p.ToBuy), .. Packs(p, measures)]) : "nothing",
                p.ToBuy.Kilograms > 0 ? Cell.Of([Measures.Cost(p.Cost), .. Delivery(p)]) : "on the shelf",
            ],
            [Citation.OurArithmetic])).ToList();
        foreach (var spent in plan.Purchases.Where(p => p.ToBuy.Kilograms > 0).Select(p => p.Cost).OfType<Money>().GroupBy(m => m.Currency))
        {
            rows.Add(new SourcedRow(["To spend on what has a price", "", "", "", Measures.Cost(new Money(spent.Sum(m => m.Value), spent.Key))], [Citation.OurArithmetic]));
        }

        if (plan.Choice is { ToPay: { } toPay } choice && (choice.Freight is not null || choice.Labour is not null))
        {
            var parts = new[] { (choice.Freight, "deliveries"), (choice.Labour, "carrying it to the beds") }.Where(p => p.Item1 is not null).Select(p => $"{Measures.Cost(p.Item1)} for {p.Item2}");
            rows.Add(new SourcedRow([$"To pay in all, with {string.Join(" and ", parts)}", "", "", "", Measures.Cost(toPay)], [Citation.OurArithmetic]));
        }

        if (plan.Cost is { } cost)
        {
            rows.Add(new SourcedRow(["Worth of all that is spread, stock included, at the prices given", "", "", "", Measures.Cost(cost)], [Citation.OurArithmetic]));
        }

        return new SourcedTable(["Material", "Needed", "From the shelf", "To buy", "Cost"], rows, KeyColumn: 3);
    }

    private static IEnumerable<string> Packs(Purchase purchase, Measures measures)
    {
        if (purchase is { Packs: { } packs, Offered.Pack: { } pack })
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{packs} of {measures.Weight(pack)}");
        }
    }

    private static IEnumerable<string> Delivery(Purchase purchase)
    {
        if (purchase.Freight is { } freight)
        {
            yield return $"and {Measures.Cost(freight)} for delivery";
        }
    }

    private static SourcedTable Steps(IReadOnlyList<SpreadingStep> steps, Measures measures) => new(
        ["Step", "Material", "For the bed", "By volume", "Rate on the ground spread", "When", "Cost"],
        [
            .. steps.Select(s => new SourcedRow(
                [
                    s.Order.ToString(CultureInfo.InvariantCulture),
                    Cell.Of(s.Material.Name, s.Purpose),
                    measures.Weight(s.Weight),
                    measures.Scoop(s.Volume),
                    Cell.Of(measures.SpreadRate(s.Rate)),
                    When(s),
                    Measures.Cost(s.Cost),
                ],
                s.Sources)),
        ],
        KeyColumn: 2);

    private static Cell When(SpreadingStep step) => step.SpreadBy is { } day ? Cell.Of(step.When, $"by {Measures.Day(day)}") : step.When;
}
