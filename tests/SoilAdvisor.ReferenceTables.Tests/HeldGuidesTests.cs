using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;
using SoilReading = SoilAdvisor.Agronomy.SoilTests.Reading;

namespace SoilAdvisor.ReferenceTables.Tests;

/// <summary>Which guides are held, and that those with conditions are read where they hold and nowhere else. Limits are typed from the publications named.</summary>
public sealed class HeldGuidesTests(RealTables real) : IClassFixture<RealTables>
{
    private static readonly SampleDepth TopFoot = new(Length.Zero, Length.FromInches(12));

    [Fact]
    public void At_least_18_institutions_are_held() =>
        Assert.True(real.Tables.Guides.Values.Select(g => g.Institution).Distinct(StringComparer.Ordinal).Count() >= 18);

    [Theory]
    [InlineData(Extractant.Mehlich3)]
    [InlineData(Extractant.Mehlich1)]
    [InlineData(Extractant.ModifiedMorgan)]
    [InlineData(Extractant.BrayP1)]
    [InlineData(Extractant.Olsen)]
    [InlineData(Extractant.AmmoniumAcetate)]
    public void Phosphorus_or_potassium_is_rated_by_each_of_the_usual_extractants(Extractant extractant) =>
        Assert.Contains(real.Tables.Guides.Values, g => g.Scales.Any(s => s is { Analyte: Analyte.P or Analyte.K } && s.Method.Extractant == extractant && s.Classes.All(c => c.Standing != Standing.Information)));

    // HortScience, pre-sidedress nitrate test for fall cabbage (psnt-cab): 24 mg/kg or more, no response, 0-30 cm.
    [Theory]
    [InlineData("23.9", "Sidedress nitrogen needed")]
    [InlineData("24", "No sidedress nitrogen")]
    public void A_nitrate_test_is_rated_with_its_crop_layer_and_time(string value, string expected)
    {
        var nitrate = Reported(Analyte.NitrateN, value, null);

        Assert.Equal(expected, Rated("northeast-nitrate-test", Test(nitrate) with { Depth = TopFoot, Timing = SampleTiming.BeforeSidedressing }, nitrate, "cabbage").Value.Class.Name);
    }

    [Fact]
    public void A_nitrate_test_of_another_time_is_not_rated()
    {
        var nitrate = Reported(Analyte.NitrateN, "24", null);

        Assert.Equal("context-not-covered", Rated("northeast-nitrate-test", Test(nitrate) with { Depth = TopFoot }, nitrate, "cabbage").Reason.Code);
    }

    // Murdock and Howe 2001 as quoted in Agronomy 15(11):2661 (m3micro2025): zinc 0.55-0.90 at phosphorus 25 and pH 6.0-6.4, 2.50-2.80 at 250 and 7.3-7.6.
    [Theory]
    [InlineData("25", "6.2", "0.54", "Below the critical range")]
    [InlineData("25", "6.2", "0.55", "Within the critical range")]
    [InlineData("25", "6.4", "0.90", "Within the critical range")]
    [InlineData("25", "6.0", "0.91", "Above the critical range")]
    [InlineData("250", "7.3", "2.49", "Below the critical range")]
    [InlineData("250", "7.6", "2.80", "Within the critical range")]
    [InlineData("250", "7.6", "2.81", "Above the critical range")]
    public void Zinc_in_Kentucky_is_read_by_phosphorus_and_pH(string phosphorus, string ph, string zinc, string expected)
    {
        var reading = Reported(Analyte.Zn, zinc, Extractant.Mehlich3);

        Assert.Equal(expected, Rated("kentucky", Test(reading, Reported(Analyte.P, phosphorus, Extractant.Mehlich3), Ph(ph)), reading, "field-corn").Value.Class.Name);
    }

    [Theory]
    [InlineData("100", "6.2")]
    [InlineData("25", "6.8")]
    public void Between_the_printed_spans_zinc_is_not_rated(string phosphorus, string ph)
    {
        var reading = Reported(Analyte.Zn, "1", Extractant.Mehlich3);

        Assert.Equal("context-not-covered", Rated("kentucky", Test(reading, Reported(Analyte.P, phosphorus, Extractant.Mehlich3), Ph(ph)), reading, "field-corn").Reason.Code);
    }

    private Answer<Rating> Rated(string guide, SoilTest test, SoilReading reading, string crop) =>
        real.Tables.Guides[guide].Rate(test, reading, new RatingContext(crop, null, null));

    private static SoilTest Test(params SoilReading[] readings) => new("T", null, null, null, null, null, null, readings, []);

    private static SoilReading Reported(Analyte analyte, string value, Extractant? extractant) =>
        new(analyte, Amount.Measured(Parse(value)), ReportingUnit.MilligramsPerKilogram, new Method(extractant, null, null, Basis.Element), "test");

    private static SoilReading Ph(string value) => new(Analyte.Ph, Amount.Measured(Parse(value)), ReportingUnit.PhUnits, Method.By(Procedure.PhWater11), "test");

    private static decimal Parse(string value) => decimal.Parse(value, System.Globalization.CultureInfo.InvariantCulture);
}
