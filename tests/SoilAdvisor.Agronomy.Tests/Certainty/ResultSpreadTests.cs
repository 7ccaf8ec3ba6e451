using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Tests.Ratings;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Certainty;

public sealed class ResultSpreadTests
{
    private static readonly Reading P = InventedGuide.Phosphorus(Amount.Measured(20m));

    [Fact]
    public void Without_a_number_of_cores_the_composites_own_spread_is_taken()
    {
        var spread = ResultSpreads.Of(InventedSpread.All, P, P.Amount, null).Value;

        Assert.Equal(10, spread.Relative.Percent, 12);
        Assert.Equal("composite-spread", Assert.Single(spread.Assumptions).Code);
    }

    // √(5² + 60² / 16) = √(25 + 225) = 15.81 %: the composite's own 10 % is not added, which would count the sampling twice.
    [Fact]
    public void With_cores_the_laboratory_and_the_field_are_combined_and_nothing_is_counted_twice()
    {
        var spread = ResultSpreads.Of(InventedSpread.All, P, P.Amount, 16).Value;

        Assert.Equal(15.81, spread.Relative.Percent, 2);
        Assert.Equal(16, spread.Cores);
        Assert.Equal(["laboratory-spread", "field-spread"], spread.Assumptions.Select(a => a.Code));
    }

    // 0.3 points of 2 % are 15 %; √(15² + 17² / 4) = √(225 + 72.25) = 17.24 %.
    [Fact]
    public void A_deviation_in_percentage_points_is_taken_in_proportion_to_the_result()
    {
        var reading = new Reading(Analyte.OrganicMatter, Amount.Measured(2m), ReportingUnit.Percent, Method.By(Procedure.LossOnIgnition), "x");

        Assert.Equal(17.24, ResultSpreads.Of(InventedSpread.All, reading, reading.Amount, 4).Value.Relative.Percent, 2);
    }

    [Fact]
    public void Cores_that_cannot_be_counted_are_said()
    {
        var reading = new Reading(Analyte.K, Amount.Measured(100m), ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Mehlich3), "x");

        var spread = ResultSpreads.Of(InventedSpread.All, reading, reading.Amount, 15).Value;

        Assert.Equal(10, spread.Relative.Percent, 12);
        Assert.Contains(spread.Assumptions, a => a.Code == "cores-not-counted");
    }

    [Fact]
    public void A_row_of_the_very_extractant_goes_before_one_without()
    {
        var own = InventedSpread.All.Spreads[0] with { Extractant = Extractant.Mehlich3, Value = 12 };
        var variability = new Variability([.. InventedSpread.All.Spreads, own]);

        Assert.Equal(12, ResultSpreads.Of(variability, P, P.Amount, null).Value.Relative.Percent, 12);
        Assert.Equal(10, ResultSpreads.Of(variability, InventedGuide.Phosphorus(P.Amount, null, Extractant.Olsen), P.Amount, null).Value.Relative.Percent, 12);
    }

    // √(10² + 24²) = 26.
    [Fact]
    public void A_conversion_widens_the_spread()
    {
        var widened = InventedSpread.Relative(10).WidenedBy(CoefficientOfVariation.FromPercent(24), new Assumption("x", "converted", Citation.OurJudgement));

        Assert.Equal(26, widened.Relative.Percent, 12);
        Assert.Equal("x", Assert.Single(widened.Assumptions).Code);
    }
}
