using SoilAdvisor.Agronomy.Sampling;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Tests.Certainty;

namespace SoilAdvisor.Agronomy.Tests.Sampling;

public sealed class PoolingTests
{
    // The geometric mean of 90 and 160 is √14400 = 120; the spread of two halves the variance: s² = ln 1.01 / 2, CV = √(e^(s²) - 1) = √(√1.01 - 1) = 7.06 %.
    [Fact]
    public void Two_alike_results_pool_to_their_geometric_mean_with_a_narrower_spread()
    {
        var pooled = Pooling.Of(TestPair.Test(90), TestPair.Test(160, "2025-10-11"), Analyte.K, InventedSpread.All).Value;

        Assert.Equal(120.0m, pooled.Reading.Amount.Number);
        Assert.Equal(7.06, pooled.Spread.Relative.Percent, 2);
    }

    // The second has 36 cores: √(5² + 60² / 36) = 11.18 %, the first its composite's 10 %. w = 1 / ln(1 + CV²): 100.50 and 80.50.
    // (100.50 × ln 20 + 80.50 × ln 30) / 181.00 = (301.07 + 273.80) / 181.00 = 3.17608, e^3.17608 = 23.95.
    [Fact]
    public void The_surer_result_weighs_more()
    {
        var second = TestPair.Test(30, analyte: Analyte.P) with { Cores = 36 };

        Assert.Equal(24.0m, Pooling.Of(TestPair.Test(20, analyte: Analyte.P), second, Analyte.P, InventedSpread.All).Value.Reading.Amount.Number);
    }

    // 6.2 and 6.5 with 0.1 each: the mean 6.35, the deviation 0.1 / √2 = 0.0707.
    [Fact]
    public void Two_ph_results_pool_to_their_mean()
    {
        var pooled = Pooling.Of(TestPair.Test(6.2m, analyte: Analyte.Ph), TestPair.Test(6.5m, analyte: Analyte.Ph), Analyte.Ph, InventedSpread.All).Value;

        Assert.Equal(6.35m, pooled.Reading.Amount.Number);
        Assert.Equal(0.0707, pooled.Spread.PhUnits.PhUnits, 4);
    }

    [Fact]
    public void Everything_that_differs_is_named_at_once()
    {
        var refused = Pooling.Of(TestPair.Test(90), TestPair.Test(160, "2026-04-10", "Second Laboratory", 8, extractant: Extractant.AmmoniumAcetate), Analyte.K, InventedSpread.All).Reason;

        Assert.Equal("tests-not-alike", refused.Code);
        Assert.Equal(
            "The two K results cannot be pooled: the laboratory (First Laboratory; Second Laboratory); the method (mehlich-3; ammonium-acetate); the season (10 October 2025; 10 April 2026); the depth (0 to 6 in; 0 to 8 in).",
            refused.Message);
    }

    [Theory]
    [InlineData("2025-11-24", true)]
    [InlineData("2025-11-25", false)]
    [InlineData("2026-10-10", false)]
    public void One_season_is_45_days_of_one_year(string sampled, bool pools) =>
        Assert.Equal(pools, Pooling.Of(TestPair.Test(90), TestPair.Test(160, sampled), Analyte.K, InventedSpread.All).IsGiven);

    [Fact]
    public void An_unstated_laboratory_or_day_is_not_taken_for_the_same()
    {
        Assert.Contains("the laboratory (not stated; First Laboratory)", Pooling.Of(TestPair.Test(90, lab: null), TestPair.Test(160), Analyte.K, InventedSpread.All).Reason.Message, StringComparison.Ordinal);
        Assert.Contains("the season (not stated; 10 October 2025)", Pooling.Of(TestPair.Test(90) with { Sampled = null }, TestPair.Test(160), Analyte.K, InventedSpread.All).Reason.Message, StringComparison.Ordinal);
        Assert.Contains("the depth (not stated; 0 to 6 in)", Pooling.Of(TestPair.Test(90, depth: null), TestPair.Test(160), Analyte.K, InventedSpread.All).Reason.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_unstated_depths_are_taken_for_one_and_said() =>
        Assert.Contains(Pooling.Of(TestPair.Test(90, depth: null), TestPair.Test(160, depth: null), Analyte.K, InventedSpread.All).Value.Assumptions, a => a.Code == "same-depth-taken");

    [Fact]
    public void A_nought_does_not_pool() =>
        Assert.Equal("two-numbers-needed", Pooling.Of(TestPair.Test(0), TestPair.Test(160), Analyte.K, InventedSpread.All).Reason.Code);
}
