using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Paper;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Sheets;

/// <summary>What is to be known of the materials themselves: the price of a pound of nutrient, and what their tests say.</summary>
internal static class MaterialSection
{
    private static readonly Nutrient[] Columns = [Nutrient.AvailableN, Nutrient.AvailableP2O5, Nutrient.K2O];

    public static IEnumerable<Block> Of(FarmPlan plan, Measures measures) => [.. Prices(plan, measures), .. Tests(plan)];

    private static IEnumerable<Block> Prices(FarmPlan plan, Measures measures)
    {
        var priced = plan.MaterialPrices.Where(p => p.Nutrients.Count > 0).ToList();
        if (priced.Count == 0)
        {
            yield break;
        }

        yield return new Heading(3, $"What a {measures.MassName} of nutrient costs");
        yield return new Paragraph(
            new Sentence("Only what counts in the season. The range is that of the published release: the plan counts on the dear end.", Citation.OurArithmetic),
            new Sentence("Where a material brings several, its whole price stands in each column in turn: compare down a column, never add along a row.", Citation.OurJudgement));
        yield return new SourcedTable(
            ["Material", $"Price of a {measures.MassName}", "Available nitrogen", "Available phosphate", "Potash"],
            [.. priced.Select(p => new SourcedRow(
                [p.Offered.Material.Name, measures.Price(p.PerPound), .. Columns.Select(n => Priced(p, n, measures))],
                [Citation.OurArithmetic, .. p.Nutrients.SelectMany(n => n.Sources)]))]);
        if (priced.Any(p => p.Working.Count > 0) && plan.Beds.Any(b => b.Working.Count > 0))
        {
            yield return new Fold("Working of the prices", 4, [.. priced.SelectMany(p => p.Working.Select(l => new WorkingBlock(l)))]);
        }
    }

    private static Cell Priced(Agronomy.Materials.Prices.MaterialPrice price, Nutrient nutrient, Measures measures) =>
        price.Nutrients.FirstOrDefault(n => n.Nutrient == nutrient) is { } found
            ? found.PerPoundLow == found.PerPound ? measures.Price(found.PerPound) : $"{measures.Price(found.PerPoundLow)} to {measures.Price(found.PerPound)}"
            : "–";

    private static IEnumerable<Block> Tests(FarmPlan plan)
    {
        if (plan.MaterialTests.Count == 0)
        {
            yield break;
        }

        yield return new Heading(3, "What the tests of your materials say");
        yield return new SourcedTable(
            ["Material", "Tested", "Found", "What it means"],
            [.. plan.MaterialTests.OrderByDescending(t => t.Forbids).Select(t => new SourcedRow(
                [t.Material.Name, t.Subject, t.Found, TradeWords.Sentence(t.Text)], [t.Source]))]);
    }
}
