using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Acidity;

public sealed class PhScalesTests
{
    // By hand: 5.4 + 0.6; (5.4 + 0.9) / 1.05; (6.0 + 0.51) / 1.06 = 6.142; 0.14 + 0.99 x 6 = 6.08, then 6.59 / 1.06 = 6.217;
    // -1.95 + 11.58 x log10 5 = 6.144, then 6.654 / 1.06 = 6.277.
    [Theory]
    [InlineData(Procedure.PhCalciumChloride, 5.4, "US-GA", 6.0)]
    [InlineData(Procedure.PhCalciumChloride, 5.4, null, 6.0)]
    [InlineData(Procedure.PhCalciumChloride, 4.5, "US-GA", 5.1)]
    [InlineData(Procedure.PhCalciumChloride, 4.5, "US-NC", 5.14)]
    [InlineData(Procedure.PhWater15, 6.0, null, 6.14)]
    [InlineData(Procedure.PhWater125, 6.0, null, 6.22)]
    [InlineData(Procedure.PhPotassiumChloride, 5.0, null, 6.28)]
    public void Another_scale_becomes_an_estimate_in_water(Procedure procedure, double ph, string? region, double expected)
    {
        var water = PhScales.InWater(Test(procedure, ph), region, null).Value;

        Assert.Equal((decimal)expected, water.Value);
        Assert.True(water.IsEstimate);
        Assert.Equal("ph-estimated", Assert.Single(water.Assumptions).Code);
    }

    [Theory]
    [InlineData(Procedure.PhWater15)]
    [InlineData(Procedure.PhWater125)]
    [InlineData(Procedure.PhPotassiumChloride)]
    public void The_published_error_is_said_where_one_is_printed(Procedure procedure) =>
        Assert.Contains("0.44", Assert.Single(PhScales.InWater(Test(procedure, 5.5), null, null).Value.Assumptions).Text, StringComparison.Ordinal);

    [Theory]
    [InlineData(Procedure.PhWater11, null)]
    [InlineData(Procedure.PhWater12, "ph-dilution")]
    [InlineData(null, "ph-in-water")]
    public void A_water_ph_stands_as_it_is(Procedure? procedure, string? said)
    {
        var water = PhScales.InWater(Test(procedure, 5.7), "US-GA", null).Value;

        Assert.Equal(5.7m, water.Value);
        Assert.False(water.IsEstimate);
        Assert.Equal(said, water.Assumptions.SingleOrDefault()?.Code);
    }

    [Theory]
    [InlineData(1.9, false)]
    [InlineData(2.0, true)]
    [InlineData(9.0, true)]
    [InlineData(9.1, false)]
    public void A_salt_ph_outside_the_relation_is_refused(double ph, bool given)
    {
        var answer = PhScales.InWater(Test(Procedure.PhPotassiumChloride, ph), null, null);

        Assert.Equal(given, answer.IsGiven);
        Assert.Equal(given ? null : "salt-ph", given ? null : answer.Reason.Code);
    }

    [Fact]
    public void A_salt_ph_is_compared_with_the_target_on_the_water_scale()
    {
        // 5.4 in calcium chloride is 6.0 in water: at a target of 6.0 nothing is needed, at 6.1 lime is.
        var test = Test(Procedure.PhCalciumChloride, 5.4);

        Assert.True(InventedLime.Lime(test, 6.0m).Value.Lime.IsZero);
        Assert.Equal("buffer-missing", InventedLime.Lime(test, 6.1m).Reason.Code);
    }

    [Fact]
    public void The_estimate_is_a_line_of_the_working()
    {
        var sheet = new WorkingSheet();

        var water = PhScales.InWater(Test(Procedure.PhPotassiumChloride, 5.0), null, sheet).Value;

        Assert.Equal(["dilute-water-ph-from-potassium-chloride", "water-ph-from-dilute-water"], sheet.Lines.Select(l => l.Formula));
        Assert.Equal(Origin.Line(2), water.From);
    }

    private static SoilTest Test(Procedure? procedure, double ph) =>
        InventedLime.Soil(null) with { Readings = [new Reading(Analyte.Ph, Amount.Measured((decimal)ph), ReportingUnit.PhUnits, Method.By(procedure), "pH line")] };
}
