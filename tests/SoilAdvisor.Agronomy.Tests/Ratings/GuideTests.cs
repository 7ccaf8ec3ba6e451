using CsCheck;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Ratings;

public sealed class GuideTests
{
    [Theory]
    [InlineData("0", "Low")]
    [InlineData("25", "Low")]
    [InlineData("25.4", "Low")]
    [InlineData("25.5", "Medium")]
    [InlineData("26", "Medium")]
    [InlineData("50", "Medium")]
    [InlineData("51", "Optimum")]
    [InlineData("100", "Optimum")]
    [InlineData("100.49", "Optimum")]
    [InlineData("100.5", "Excessive")]
    [InlineData("101", "Excessive")]
    public void Whole_number_bins_take_both_printed_ends(string value, string expected) =>
        Assert.Equal(expected, Rated(InventedGuide.Bins, Amount.Measured(decimal.Parse(value, System.Globalization.CultureInfo.InvariantCulture))).Class.Name);

    [Theory]
    [InlineData("29.999", "Below")]
    [InlineData("30", "Optimum")]
    [InlineData("50", "Optimum")]
    [InlineData("50.001", "Above")]
    public void A_shared_limit_belongs_to_the_class_that_includes_it(string value, string expected) =>
        Assert.Equal(expected, Rated(InventedGuide.Shared, Amount.Measured(decimal.Parse(value, System.Globalization.CultureInfo.InvariantCulture))).Class.Name);

    [Fact]
    public void Rounding_to_a_printed_bin_is_said()
    {
        Assert.Contains(Rated(InventedGuide.Bins, Amount.Measured(25.5m)).Assumptions, a => a.Code == "rounded-to-printed-bins");
        Assert.Empty(Rated(InventedGuide.Bins, Amount.Measured(25m)).Assumptions);
    }

    [Fact]
    public void A_reading_below_detection_is_rated_in_the_lowest_class_it_can_be()
    {
        Assert.Equal("Low", Rated(InventedGuide.Bins, Amount.Below(5m)).Class.Name);
        Assert.Empty(Rated(InventedGuide.Bins, Amount.Below(5m)).Assumptions);
    }

    [Fact]
    public void A_reading_that_may_lie_in_several_classes_says_so()
    {
        var rating = Rated(InventedGuide.Bins, Amount.Below(40m));

        Assert.Equal("Low", rating.Class.Name);
        Assert.Equal("open-result", Assert.Single(rating.Assumptions).Code);
    }

    [Fact]
    public void More_than_a_number_lies_at_least_in_the_class_of_that_number()
    {
        Assert.Equal("Excessive", Rated(InventedGuide.Bins, Amount.Above(900m)).Class.Name);
        Assert.Equal("open-result", Assert.Single(Rated(InventedGuide.Bins, Amount.Above(60m)).Assumptions).Code);
    }

    [Theory]
    [InlineData(Detection.Colorimetric)]
    [InlineData(null)]
    public void A_plasma_scale_refuses_a_colour_reaction_and_an_unnamed_detection(Detection? detection)
    {
        var reading = InventedGuide.Phosphorus(Amount.Measured(20m), detection);

        var refused = InventedGuide.Bins.Rate(InventedGuide.Test(reading), reading, default).Reason;

        Assert.Equal("method-not-covered", refused.Code);
        Assert.Contains("mehlich-3, icp", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_guide_that_prints_no_detection_takes_both_and_says_so() =>
        Assert.Equal("guide-detection-not-stated", Assert.Single(Rated(InventedGuide.Shared, Amount.Measured(20m)).Assumptions).Code);

    [Fact]
    public void Another_extractant_is_another_test()
    {
        var reading = InventedGuide.Phosphorus(Amount.Measured(20m), Detection.Icp, Extractant.Olsen);

        Assert.Equal("method-not-covered", InventedGuide.Shared.Rate(InventedGuide.Test(reading), reading, default).Reason.Code);
    }

    [Fact]
    public void An_analyte_without_limits_is_refused()
    {
        var reading = new Reading(Analyte.Zn, Amount.Measured(1m), ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Mehlich3), "x");

        Assert.Equal("analyte-not-covered", InventedGuide.Bins.Rate(InventedGuide.Test(reading), reading, default).Reason.Code);
    }

    [Fact]
    public void A_value_that_was_not_reported_is_not_rated()
    {
        var reading = InventedGuide.Phosphorus(default);

        Assert.Equal("not-reported", InventedGuide.Bins.Rate(InventedGuide.Test(reading), reading, default).Reason.Code);
    }

    // Limits at CEC 8: 75 + 2.5 x 8 = 95 and 95 + 2.5 x 8 = 115.
    [Theory]
    [InlineData("94.9", "Below critical")]
    [InlineData("95", "Maintenance")]
    [InlineData("115", "Maintenance")]
    [InlineData("115.1", "Above")]
    public void Limits_move_with_the_exchange_capacity(string value, string expected)
    {
        var reading = Potassium(decimal.Parse(value, System.Globalization.CultureInfo.InvariantCulture));
        var cec = new Reading(Analyte.CationExchangeCapacity, Amount.Measured(8m), ReportingUnit.MilliequivalentsPer100Grams, Method.By(null), "x");

        Assert.Equal(expected, InventedGuide.ByCec.Rate(InventedGuide.Test(reading, cec), reading, default).Value.Class.Name);
    }

    [Fact]
    public void Without_the_exchange_capacity_the_answer_asks_for_it()
    {
        var reading = Potassium(100m);

        var refused = InventedGuide.ByCec.Rate(InventedGuide.Test(reading), reading, default).Reason;

        Assert.Equal("context-not-covered", refused.Code);
        Assert.Contains("cation exchange capacity", refused.Suggestion, StringComparison.Ordinal);
    }

    [Fact]
    public void A_higher_value_never_gets_a_lower_class() =>
        Gen.Select(Gen.Decimal[0, 200], Gen.Decimal[0, 200]).Sample((a, b) =>
        {
            var (low, high) = (Math.Min(a, b), Math.Max(a, b));
            Assert.True(Rated(InventedGuide.Bins, Amount.Measured(low)).ClassIndex <= Rated(InventedGuide.Bins, Amount.Measured(high)).ClassIndex);
        });

    [Fact]
    public void Working_names_the_limits_and_the_class_and_changes_nothing()
    {
        var sheet = new WorkingSheet();
        var reading = InventedGuide.Phosphorus(Amount.Measured(40m));

        var with = InventedGuide.Bins.Rate(InventedGuide.Test(reading), reading, default, sheet).Value;

        var line = Assert.Single(sheet.Lines);
        Assert.Equal("26 ≤ P ≤ 50 mg/kg: Medium", line.Shown);
        Assert.Equal("Medium", line.ResultText);
        Assert.Equal(Rated(InventedGuide.Bins, Amount.Measured(40m)).ClassIndex, with.ClassIndex);
    }

    private static Reading Potassium(decimal value) =>
        new(Analyte.K, Amount.Measured(value), ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.AmmoniumAcetate), "x");

    private static Rating Rated(Guide guide, Amount amount)
    {
        var reading = InventedGuide.Phosphorus(amount);
        return guide.Rate(InventedGuide.Test(reading), reading, default).Value;
    }
}
