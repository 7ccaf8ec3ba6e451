using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Tests.Ratings;

namespace SoilAdvisor.Agronomy.Tests.Certainty;

public sealed class LikelyRangeTests
{
    // Nine tenths of a normal distribution lie below 1.2816 standard deviations. Spread 10 %: s = sqrt(ln 1.01) = 0.099751; exp(1.2816 x 0.099751) = 1.13637. 100 / 1.13637 = 88.00, 100 x 1.13637 = 113.64.
    [Fact]
    public void A_result_of_a_hundred_with_a_spread_of_ten_percent_likely_lies_from_88_to_114()
    {
        var range = LikelyRange.Of(InventedSpread.Phosphorus(InventedGuide.Bins, Amount.Measured(100m)), InventedSpread.Relative(10))!.Value;

        Assert.Equal(88.00, range.Low, 0.01);
        Assert.Equal(113.64, range.High, 0.01);
    }

    // 6.4 plus and minus 1.2816 x 0.1.
    [Fact]
    public void A_pH_lies_as_far_below_as_above()
    {
        var range = LikelyRange.Of(InventedSpread.Ph(Amount.Measured(6.4m)), InventedSpread.OfPh(0.1))!.Value;

        Assert.Equal(6.27184, range.Low, 0.0001);
        Assert.Equal(6.52816, range.High, 0.0001);
    }

    [Fact]
    public void Four_times_in_five_the_truth_lies_within() => Assert.Equal(0.8, LikelyRange.Share.Fraction);

    [Fact]
    public void An_open_result_and_a_zero_have_no_range()
    {
        Assert.Null(LikelyRange.Of(InventedSpread.Phosphorus(InventedGuide.Bins, Amount.Below(5m)), InventedSpread.Relative(10)));
        Assert.Null(LikelyRange.Of(InventedSpread.Phosphorus(InventedGuide.Bins, Amount.Above(5m)), InventedSpread.Relative(10)));
        Assert.Null(LikelyRange.Of(InventedSpread.Phosphorus(InventedGuide.Bins, Amount.Measured(0m)), InventedSpread.Relative(10)));
    }
}
