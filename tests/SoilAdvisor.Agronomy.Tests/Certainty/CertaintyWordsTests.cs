using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Tests.Ratings;

namespace SoilAdvisor.Agronomy.Tests.Certainty;

/// <summary>Each probability is worked out beside the row from the printed table of the normal distribution; s = √ln(1 + CV²).</summary>
public sealed class CertaintyWordsTests
{
    [Theory]
    // CV 10 %: s = 0.09975. ln(25.5 / 20) / s = 2.44: 99 %.
    [InlineData("20.000", 10, "Low")]
    // ln(25.5 / 22.5) / s = 1.255: 89.5 %, printed 90 %. ln(25.5 / 22.55) / s = 1.233: 89 %.
    [InlineData("22.500", 10, "Low")]
    [InlineData("22.550", 10, "probably Low (89 %)")]
    // ln(25.5 / 24.87) / s = 0.251: 60 %; ln(25.5 / 24.9) / s = 0.239: 59 %.
    [InlineData("24.870", 10, "probably Low (60 %)")]
    [InlineData("24.900", 10, "Low or Medium, cannot be told apart (59 % / 41 %)")]
    // CV 60 %: s = 0.5545. At 40: 25.5 is -0.81 (21 %), 50.5 is 0.42 (66 %), 100.5 is 1.66 (95 %): 21, 45, 29 and 5 %.
    [InlineData("40.000", 60, "Low, Medium or Optimum, cannot be told apart (21 % / 45 % / 29 %)")]
    public void A_probability_is_said_as_the_thresholds_have_it(string printed, int percent, string expected)
    {
        var rating = InventedSpread.Phosphorus(InventedGuide.Bins, Amount.Measured(decimal.Parse(printed, System.Globalization.CultureInfo.InvariantCulture)));

        Assert.Equal(expected, RatingCertainties.Of(rating, InventedSpread.Relative(percent)).Value.Words);
    }

    // Optimum is 30 to 50 only. At 51 with CV 20 % (s = 0.198): 30 is -2.68 (0 %), 50 is -0.10 (46 %): Above 54 %.
    // At 50.1 with CV 1 000 %: s = 2.148; 30 is -0.24 (41 %), 50 is 0.00 (50 %): 41, 9 and 50 %.
    [Theory]
    [InlineData("51.000", 20, "Optimum or Above, cannot be told apart (46 % / 54 %)")]
    [InlineData("50.100", 1000, "Below or Above, cannot be told apart (41 % / 50 %)")]
    public void Classes_are_named_from_low_to_high(string printed, int percent, string expected)
    {
        var rating = InventedSpread.Phosphorus(InventedGuide.Shared, Amount.Measured(decimal.Parse(printed, System.Globalization.CultureInfo.InvariantCulture)));

        Assert.Equal(expected, RatingCertainties.Of(rating, InventedSpread.Relative(percent)).Value.Words);
    }

    [Fact]
    public void A_probability_that_is_not_quite_certain_never_prints_as_certain()
    {
        Assert.Equal("over 99 %", Probability.FromFraction(0.999).ToString());
        Assert.Equal("99 %", Probability.FromFraction(0.99).ToString());
        Assert.Equal("under 1 %", Probability.FromFraction(0.004).ToString());
        Assert.Equal("1 %", Probability.FromFraction(0.01).ToString());
        Assert.Equal("100 %", Probability.Certain.ToString());
        Assert.Equal("0 %", default(Probability).ToString());
    }
}
