using System.Globalization;
using CsCheck;
using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Tests.Ratings;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Certainty;

public sealed class ClassProbabilityTests
{
    // Five standard errors of a share: a right answer fails once in a million draws of the whole test, and the seed is fixed.
    [Theory]
    [InlineData("24", 10)]
    [InlineData("26", 10)]
    [InlineData("12", 40)]
    public void A_simulated_laboratory_finds_the_same_shares(string printed, int percent)
    {
        var amount = decimal.Parse(printed, CultureInfo.InvariantCulture);
        var shares = Shares(InventedSpread.Phosphorus(InventedGuide.Bins, Amount.Measured(amount)), InventedSpread.Relative(percent));

        // Bins 0-25, 26-50, 51-100 meet at 25.5, 50.5 and 100.5.
        var below = ChanceDraws.BelowEach((double)amount, amount.Scale, Math.Sqrt(Math.Log(1 + (percent * percent / 1e4))), true, [25.5, 50.5, 100.5], 20261125);

        AgreesWith(below, shares);
    }

    [Theory]
    [InlineData("6.4")]
    [InlineData("6.0")]
    public void A_simulated_laboratory_finds_the_same_shares_of_ph(string printed)
    {
        var amount = decimal.Parse(printed, CultureInfo.InvariantCulture);
        var shares = Shares(InventedSpread.Ph(Amount.Measured(amount)), InventedSpread.OfPh(0.1));

        AgreesWith(ChanceDraws.BelowEach((double)amount, amount.Scale, 0.1, false, [6.0, 6.5], 20261125), shares);
    }

    [Fact]
    public void Probabilities_sum_to_one() =>
        Gen.Select(Gen.Decimal[0, 300], Gen.Int[0, 3], Gen.Double[0, 200]).Sample((value, decimals, percent) =>
        {
            var shares = Shares(InventedSpread.Phosphorus(InventedGuide.Bins, Amount.Measured(Math.Round(value, decimals))), InventedSpread.Relative(percent), least: true);
            Assert.True(shares.Length == 4 && shares.All(s => s is >= 0 and <= 1));
            if (Math.Round(value, decimals) > 0)
            {
                Assert.Equal(1, shares.Sum(), 12);
            }
        });

    [Fact]
    public void A_result_on_a_limit_lies_on_either_side_alike()
    {
        // Printed far finer than its spread, so that only the limit decides.
        var shares = Shares(InventedSpread.Phosphorus(InventedGuide.Shared, Amount.Measured(30.00000m)), InventedSpread.Relative(10));

        Assert.Equal(0.5, shares[0], 6);
    }

    [Fact]
    public void As_far_above_a_limit_as_below_it_by_ratio_is_as_likely()
    {
        // 30 / 1.2 = 25 and 30 x 1.2 = 36.
        var below = Shares(InventedSpread.Phosphorus(InventedGuide.Shared, Amount.Measured(25.00000m)), InventedSpread.Relative(10));
        var above = Shares(InventedSpread.Phosphorus(InventedGuide.Shared, Amount.Measured(36.00000m)), InventedSpread.Relative(10));

        Assert.Equal(below[0], 1 - above[0], 6);
    }

    [Theory]
    [InlineData("25", "Low")]
    [InlineData("26", "Medium")]
    [InlineData("50", "Medium")]
    [InlineData("51", "Optimum")]
    public void Without_spread_a_printed_bin_is_certain(string value, string expected)
    {
        var rating = InventedSpread.Phosphorus(InventedGuide.Bins, Amount.Measured(decimal.Parse(value, CultureInfo.InvariantCulture)));

        var certain = Certainty(rating, InventedSpread.Relative(0));

        Assert.Equal(expected, certain.Words);
        Assert.Equal(1, certain.Classes.Single(c => c.Class == expected).Probability!.Value.Fraction);
    }

    // 30 stands for 29.5 to 30.5 and the limit is 30 exactly: (ln 30 - ln 29.5) / (ln 30.5 - ln 29.5) = 0.016807 / 0.033336 = 0.5042.
    [Fact]
    public void Rounding_alone_leaves_a_result_on_an_exact_limit_open()
    {
        var shares = Shares(InventedSpread.Phosphorus(InventedGuide.Shared, Amount.Measured(30m)), InventedSpread.Relative(0));

        Assert.Equal(0.5042, shares[0], 4);
    }

    [Fact]
    public void A_coarser_last_digit_makes_a_result_near_a_limit_less_sure()
    {
        var fine = Shares(InventedSpread.Phosphorus(InventedGuide.Shared, Amount.Measured(28.00m)), InventedSpread.Relative(5));
        var coarse = Shares(InventedSpread.Phosphorus(InventedGuide.Shared, Amount.Measured(28m)), InventedSpread.Relative(5));

        Assert.True(coarse[0] < fine[0]);
    }

    [Fact]
    public void A_converted_result_keeps_the_digits_of_the_report()
    {
        var reading = InventedGuide.Phosphorus(Amount.Measured(60m)) with { Unit = ReportingUnit.PoundsPerAcre };
        var rating = InventedGuide.Shared.Rate(InventedGuide.Test(reading), reading, default).Value;

        // 60 lb/acre is 30 mg/kg; 59.5 to 60.5 lb/acre is 29.75 to 30.25 mg/kg: (ln 30 - ln 29.75) / (ln 30.25 - ln 29.75) = 0.0083682 / 0.0166670 = 0.5021.
        Assert.Equal(0.5021, Shares(rating, InventedSpread.Relative(0))[0], 4);
    }

    [Fact]
    public void More_cores_never_widen()
    {
        var rating = InventedSpread.Phosphorus(InventedGuide.Bins, Amount.Measured(20m));
        var likely = Enumerable.Range(1, 40)
            .Select(cores => RatingCertainties.Of(rating, InventedGuide.Test(rating.Reading) with { Cores = cores }, InventedSpread.All).Value)
            .ToList();

        Assert.Equal(likely.Select(c => c.Spread.Relative).OrderDescending(), likely.Select(c => c.Spread.Relative));
        Assert.Equal(likely.Select(c => c.Classes[0].AtLeast).Order(), likely.Select(c => c.Classes[0].AtLeast));
    }

    [Fact]
    public void A_result_reported_as_less_than_has_bounds_and_no_point()
    {
        var certain = Certainty(InventedSpread.Phosphorus(InventedGuide.Bins, Amount.Below(26m)), InventedSpread.Relative(10));

        Assert.All(certain.Classes, c => Assert.Null(c.Probability));
        // At 26 itself: Φ((ln 25.5 - ln 26) / 0.09975) = Φ(-0.195) = 0.423; anything lower is surer.
        Assert.Equal(0.423, certain.Classes[0].AtLeast.Fraction, 3);
        Assert.Equal(Probability.Certain, certain.Classes[0].AtMost);
        Assert.Equal(0, certain.Classes[1].AtLeast.Fraction);
        Assert.Equal(0.577, certain.Classes[1].AtMost.Fraction, 3);
        Assert.Equal("Low, at least 42 %", certain.Words);
        Assert.Contains(certain.Assumptions, a => a.Code == "open-result-bounds");
    }

    [Fact]
    public void A_result_reported_as_more_than_bounds_the_highest_class()
    {
        var certain = Certainty(InventedSpread.Phosphorus(InventedGuide.Bins, Amount.Above(60m)), InventedSpread.Relative(10));

        Assert.Equal(Probability.Certain, certain.Classes[3].AtMost);
        Assert.Equal(0, certain.Classes[2].AtLeast.Fraction);
        // The middle of 50.5 to 100.5 by ratio is 71.2, from where either limit is ln(100.5/71.24) / 0.09975 = 3.45 away: Φ(3.45) - Φ(-3.45) = 0.9994.
        Assert.Equal(0.9994, certain.Classes[2].AtMost.Fraction, 4);
    }

    [Fact]
    public void A_printed_nought_is_less_than_half_of_its_last_digit()
    {
        var certain = Certainty(InventedSpread.Phosphorus(InventedGuide.Bins, Amount.Measured(0m)), InventedSpread.Relative(10));

        Assert.Equal("Low", certain.Words);
        Assert.Null(certain.Classes[0].Probability);
    }

    [Fact]
    public void Limits_that_move_with_the_exchange_capacity_are_used_where_they_stand()
    {
        var reading = new Reading(Analyte.K, Amount.Measured(95.0000m), ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.AmmoniumAcetate), "x");
        var cec = new Reading(Analyte.CationExchangeCapacity, Amount.Measured(8m), ReportingUnit.MilliequivalentsPer100Grams, Method.By(null), "x");
        var test = InventedGuide.Test(reading, cec);

        // The lower limit at CEC 8 is 75 + 2.5 x 8 = 95.
        var certain = RatingCertainties.Of(InventedGuide.ByCec.Rate(test, reading, default).Value, test, InventedSpread.All).Value;

        Assert.Equal(0.5, certain.Classes[0].AtLeast.Fraction, 4);
    }

    [Fact]
    public void Where_no_spread_is_published_none_is_invented()
    {
        var rating = InventedSpread.Phosphorus(InventedGuide.Bins, Amount.Measured(20m));

        var refused = RatingCertainties.Of(rating, InventedGuide.Test(rating.Reading), new Variability([])).Reason;

        Assert.Equal("spread-not-known", refused.Code);
        Assert.Contains("no probability is given for P", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_index_does_not_borrow_the_spread_of_one_of_its_results()
    {
        var rating = InventedSpread.Phosphorus(InventedGuide.Bins, Amount.Measured(20m));
        var scale = rating.Scale;
        var index = rating with { Scale = new RatingScale(scale.Analyte, scale.Method, scale.Unit, scale.PrintedDecimals, scale.Classes) { Index = "invented-index" } };

        Assert.Equal("index-spread-not-known", RatingCertainties.Of(index, InventedGuide.Test(index.Reading), InventedSpread.All).Reason.Code);
    }

    [Fact]
    public void Working_shows_a_line_for_each_limit_and_changes_nothing()
    {
        var rating = InventedSpread.Phosphorus(InventedGuide.Bins, Amount.Measured(24m));
        var test = InventedGuide.Test(rating.Reading) with { Cores = 15 };
        var sheet = new WorkingSheet();

        var with = RatingCertainties.Of(rating, test, InventedSpread.All, sheet).Value;

        Assert.Equal(["spread-of-composite", "probability-below-limit", "probability-below-limit", "probability-below-limit"], sheet.Lines.Select(l => l.Formula));
        Assert.Equal(RatingCertainties.Of(rating, test, InventedSpread.All).Value.Classes, with.Classes);
    }

    private static void AgreesWith(double[] belowEach, double[] shares)
    {
        var ours = 0d;
        for (var i = 0; i < belowEach.Length; i++)
        {
            ours += shares[i];
            var tolerance = Math.Max(5 * Math.Sqrt(ours * (1 - ours) / ChanceDraws.Kept), 5d / ChanceDraws.Kept);
            Assert.InRange(belowEach[i], ours - tolerance, ours + tolerance);
        }
    }

    private static RatingCertainty Certainty(Rating rating, ResultSpread spread) => RatingCertainties.Of(rating, spread).Value;

    private static double[] Shares(Rating rating, ResultSpread spread, bool least = false) =>
        [.. Certainty(rating, spread).Classes.Select(c => least ? c.AtLeast.Fraction : c.Probability!.Value.Fraction)];
}
