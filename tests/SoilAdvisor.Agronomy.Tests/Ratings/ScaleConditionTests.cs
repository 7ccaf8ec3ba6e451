using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Tests.Ratings;

public sealed class ScaleConditionTests
{
    // Invented: zinc limits for pH from 6.1 to below 6.6 with phosphorus to 30 mg/kg.
    private static readonly Guide ByPhAndPhosphorus = InventedGuide.Of(new RatingScale(
        Analyte.Zn, new ScaleMethod(Extractant.Mehlich3, ScaleDetection.Any, null), ReportingUnit.MilligramsPerKilogram, null,
        [InventedGuide.Class("Low", Standing.Below, null, false, 1, false), InventedGuide.Class("Enough", Standing.Target, 1, true, null, false)])
    {
        Conditions = [new ScaleCondition(Analyte.Ph, 6.1m, true, 6.6m, false), new ScaleCondition(Analyte.P, null, false, 30, true)],
    });

    // Invented: nitrate limits for a sample of the top 12 in before sidedressing.
    private static readonly Guide BeforeSidedressing = InventedGuide.Of(new RatingScale(
        Analyte.NitrateN, new ScaleMethod(Extractant.Water, ScaleDetection.Any, null), ReportingUnit.MilligramsPerKilogram, null,
        [InventedGuide.Class("Sidedress", Standing.Below, null, false, 25, false), InventedGuide.Class("Enough", Standing.Target, 25, true, null, false)])
    {
        Timing = SampleTiming.BeforeSidedressing,
        Depth = new SampleDepth(Length.Zero, Length.FromInches(12)),
    });

    [Theory]
    [InlineData("6.09", "30", false)]
    [InlineData("6.1", "30", true)]
    [InlineData("6.59", "30", true)]
    [InlineData("6.6", "30", false)]
    [InlineData("6.3", "30.01", false)]
    public void A_scale_applies_only_inside_all_its_spans(string ph, string phosphorus, bool applies) =>
        Assert.Equal(applies, Rated(Ph(ph), Phosphorus(phosphorus)).IsGiven);

    [Fact]
    public void What_a_condition_lacks_is_asked_for_by_name()
    {
        var refused = Rated(Phosphorus("20")).Reason;

        Assert.Equal("context-not-covered", refused.Code);
        Assert.Contains("the soil pH in water", refused.Suggestion, StringComparison.Ordinal);
        Assert.Contains("pH from 6.1 to below 6.6", refused.Suggestion, StringComparison.Ordinal);
        Assert.DoesNotContain("mehlich-3", refused.Suggestion, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Procedure.PhWater11, true)]
    [InlineData(Procedure.PhWater12, true)]
    [InlineData(Procedure.PhCalciumChloride, false)]
    [InlineData(Procedure.PhPotassiumChloride, false)]
    public void A_pH_in_salt_solution_meets_no_span_of_pH_in_water(Procedure procedure, bool applies) =>
        Assert.Equal(applies, Rated(Ph("6.3", procedure), Phosphorus("20")).IsGiven);

    [Fact]
    public void Phosphorus_by_another_extractant_meets_no_span()
    {
        var olsen = new Reading(Analyte.P, Amount.Measured(20), ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Olsen), "x");

        Assert.False(Rated(Ph("6.3"), olsen).IsGiven);
    }

    // 60 lb/acre by the laboratory's two million pounds is 30 mg/kg.
    [Theory]
    [InlineData("60", true)]
    [InlineData("60.2", false)]
    public void The_other_value_is_brought_to_the_unit_of_the_scale(string poundsPerAcre, bool applies)
    {
        var phosphorus = new Reading(Analyte.P, Amount.Measured(Parse(poundsPerAcre)), ReportingUnit.PoundsPerAcre, Method.Extracted(Extractant.Mehlich3), "x");

        Assert.Equal(applies, Rated(Ph("6.3"), phosphorus).IsGiven);
    }

    [Fact]
    public void Less_than_a_number_meets_a_span_only_when_every_such_value_does()
    {
        var phosphorus = InventedGuide.Phosphorus(Amount.Below(5));
        var ph = new Reading(Analyte.Ph, Amount.Below(6.4m), ReportingUnit.PhUnits, Method.By(null), "x");

        Assert.True(Rated(Ph("6.3"), phosphorus).IsGiven);
        Assert.False(Rated(ph, phosphorus).IsGiven);
    }

    [Theory]
    [InlineData(12, true)]
    [InlineData(11.5, true)]
    [InlineData(11.4, false)]
    [InlineData(12.5, true)]
    [InlineData(12.6, false)]
    public void A_layer_is_the_scales_own_to_half_an_inch(double bottomInches, bool applies) =>
        Assert.Equal(applies, Nitrate(new SampleDepth(Length.Zero, Length.FromInches(bottomInches)), SampleTiming.BeforeSidedressing));

    [Fact]
    public void A_nitrate_test_without_timing_or_depth_is_refused_and_told_which()
    {
        var nitrate = Nitrate();
        var test = InventedGuide.Test(nitrate);

        var refused = BeforeSidedressing.Rate(test, nitrate, default).Reason;

        Assert.Contains("before-sidedressing", refused.Suggestion, StringComparison.Ordinal);
        Assert.Contains("a sample from 0 to 12 in", refused.Suggestion, StringComparison.Ordinal);
        Assert.False(Nitrate(new SampleDepth(Length.Zero, Length.FromInches(12)), null));
        Assert.False(Nitrate(null, SampleTiming.BeforeSidedressing));
    }

    private static bool Nitrate(SampleDepth? depth, SampleTiming? timing)
    {
        var nitrate = Nitrate();
        return BeforeSidedressing.Rate(InventedGuide.Test(nitrate) with { Depth = depth, Timing = timing }, nitrate, default).IsGiven;
    }

    private static Reading Nitrate() => new(Analyte.NitrateN, Amount.Measured(20), ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Water), "x");

    private static Answer<Rating> Rated(params Reading[] others)
    {
        var zinc = new Reading(Analyte.Zn, Amount.Measured(2), ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Mehlich3), "x");
        return ByPhAndPhosphorus.Rate(InventedGuide.Test([zinc, .. others]), zinc, default);
    }

    private static Reading Ph(string value, Procedure procedure = Procedure.PhWater11) =>
        new(Analyte.Ph, Amount.Measured(Parse(value)), ReportingUnit.PhUnits, Method.By(procedure), "x");

    private static Reading Phosphorus(string value) => InventedGuide.Phosphorus(Amount.Measured(Parse(value)));

    private static decimal Parse(string value) => decimal.Parse(value, System.Globalization.CultureInfo.InvariantCulture);
}
