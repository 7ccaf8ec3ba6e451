using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.Tests.Certainty;

/// <summary>
/// Against a printed "Table A.2, Cumulative Normal Distribution" of a course in statistics (a stored copy was read:
/// studylib.net/doc/25935684, statistics tables z and t), four decimals.
/// </summary>
public sealed class PrintedTableTests
{
    // z = (limit - 6.5) / 0.1.
    [Theory]
    [InlineData(6.40, 0.1587)]
    [InlineData(6.38, 0.1151)]
    [InlineData(6.375, 0.1056)]
    [InlineData(6.35, 0.0668)]
    [InlineData(6.30, 0.0228)]
    [InlineData(6.25, 0.0062)]
    [InlineData(6.20, 0.0013)]
    public void A_ph_below_a_limit_has_the_printed_probability(double limit, double printed) =>
        Assert.Equal(printed, CertaintyFormulas.BelowPhLimit.Of(new ResultNearLimit(new Coefficient(6.5), default, new Coefficient(limit), new Coefficient(0.1))).Fraction, 0.00005);

    // A quantity is lognormal when its logarithm is normal: z = ln(limit / 40) / s. CV = √(e^0.01 - 1) makes s = 0.1.
    [Theory]
    [InlineData(-1.00, 0.1587)]
    [InlineData(-1.25, 0.1056)]
    [InlineData(-2.00, 0.0228)]
    [InlineData(-2.50, 0.0062)]
    [InlineData(-3.00, 0.0013)]
    public void A_lognormal_result_below_a_limit_has_the_printed_probability(double z, double printed)
    {
        var spread = 100 * Math.Sqrt(Math.Exp(0.01) - 1);
        var limit = 40 * Math.Exp(z * 0.1);

        Assert.Equal(printed, CertaintyFormulas.BelowLimit.Of(new ResultNearLimit(new Coefficient(40), default, new Coefficient(limit), new Coefficient(spread))).Fraction, 0.00005);
    }

    // 1 minus the printed lower tail.
    [Theory]
    [InlineData(6.60, 0.8413)]
    [InlineData(6.70, 0.9772)]
    public void The_upper_side_is_the_mirror_of_the_lower(double limit, double expected) =>
        Assert.Equal(expected, CertaintyFormulas.BelowPhLimit.Of(new ResultNearLimit(new Coefficient(6.5), default, new Coefficient(limit), new Coefficient(0.1))).Fraction, 0.00005);
}
