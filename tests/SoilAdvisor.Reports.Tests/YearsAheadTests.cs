using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Agronomy.YearsAhead;

namespace SoilAdvisor.Reports.Tests;

public sealed class YearsAheadTests
{
    [Fact]
    public void Each_year_stands_with_its_band_and_what_it_means_is_said()
    {
        var page = Page(new YearsAheadPlan(7, Given(7), Answer<NutrientOutlook>.Refused("yield-needed", "Cabbage: no yield is known", "Give the expected yield by weight"), [], null));

        Assert.Contains("#### Phosphorus and potassium over the years", page, StringComparison.Ordinal);

        // 40 mg/kg less 55 / 20 = 2.75 a year.
        Assert.Contains("| 2 seasons | 34.5 |", page, StringComparison.Ordinal);
        Assert.Contains("It falls.", page, StringComparison.Ordinal);
        Assert.Contains("not projected. Cabbage: no yield is known.", page, StringComparison.Ordinal);
        Assert.Contains("Give the expected yield by weight.", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(5, false)]
    [InlineData(6, true)]
    public void More_than_five_years_fold(int years, bool folds) =>
        Assert.Equal(folds, Page(new YearsAheadPlan(years, Given(years), null, [], null)).Contains($"Years 6 to {years}", StringComparison.Ordinal));

    [Fact]
    public void At_the_stop_limit_the_reason_stands_first()
    {
        var page = Page(new YearsAheadPlan(5, Given(5), null, [], new Cited<string>("Nothing here.", InventedPlan.GuidePage)));
        Assert.True(page.IndexOf("**Nothing here.**", StringComparison.Ordinal) < page.IndexOf("| 1 season |", StringComparison.Ordinal));
    }

    [Fact]
    public void A_bed_without_years_ahead_has_no_such_section() =>
        Assert.DoesNotContain("over the years", MarkdownReport.Write(InventedPlan.WithBeds("one", InventedPlan.QuietBed("1")), InventedPlan.Bibliography), StringComparison.Ordinal);

    private static Answer<NutrientOutlook> Given(int years)
    {
        var test = new TestedLevel(Extractant.Mehlich3, SoilConcentration.FromMilligramsPerKilogram(40), CoefficientOfVariation.FromPercent(10), "P");
        var balance = new YearlyBalance<TotalP2O5>(default, default, default, default, Rate<TotalP2O5>.FromPoundsPerAcre(55));
        var projection = Projections.OfPhosphorus(test, new TestMovement<TotalP2O5>(Extractant.Mehlich3, new Coefficient(20), new Coefficient(2), InventedPlan.RatePage, []), balance, years).Value;
        return Answer<NutrientOutlook>.Given(new NutrientOutlook(PlantNutrient.P2O5, Standing.Target, projection, null, null, default, default, balance.Removed.Amount, null, [new Cited<string>("It falls", InventedPlan.RatePage)], []));
    }

    private static string Page(YearsAheadPlan plan) =>
        MarkdownReport.Write(InventedPlan.WithBeds("one", InventedPlan.QuietBed("1") with { YearsAhead = plan }), InventedPlan.Bibliography);
}
