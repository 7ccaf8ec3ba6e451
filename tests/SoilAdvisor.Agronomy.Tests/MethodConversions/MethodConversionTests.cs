using SoilAdvisor.Agronomy.MethodConversions;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.MethodConversions;

/// <summary>The mechanism, on invented lines.</summary>
public sealed class MethodConversionTests
{
    private static readonly Citation Seen = new("invented", null, Evidence.Seen);

    private static readonly MethodConversion BrayToPlasma = new(
        "bray-to-plasma", Analyte.P, Method.Extracted(Extractant.BrayP1), Method.Extracted(Extractant.Mehlich3, Detection.Icp),
        new ConversionLine(1.5m, 2m, ReportingUnit.MilligramsPerKilogram, 5, 100, 0.9m, 20, true), null, 7.4m, "invented soils", "invented soils", "another factor", Seen);

    private static readonly MethodConversion PlasmaToColour = new(
        "plasma-to-colour", Analyte.P, Method.Extracted(Extractant.Mehlich3, Detection.Icp), Method.Extracted(Extractant.Mehlich3, Detection.Colorimetric),
        null, "the two are different tests.", null, "invented soils", "nowhere", null, Seen);

    private static readonly MethodConversion SaltToWater = new(
        "salt-to-water", Analyte.Ph, Method.By(Procedure.PhCalciumChloride), Method.By(Procedure.PhWater11),
        new ConversionLine(1, 0.6m, ReportingUnit.PhUnits, null, null, null, 0.3m, false), null, null, "invented soils", "invented soils", null, Seen);

    // By head: 1.5 × 20 + 2 = 32.
    [Fact]
    public void A_reading_becomes_one_of_the_target_method_with_its_error_and_its_words()
    {
        var converted = Convert(Phosphorus(20), BrayToPlasma).Value;

        Assert.Equal(32.0m, converted.Reading.Amount.Number);
        Assert.Equal(Method.Extracted(Extractant.Mehlich3, Detection.Icp), converted.Reading.Method);
        Assert.Equal("P line", converted.Reading.Where);
        Assert.Equal(20, converted.Original.Amount.Number);
        Assert.Equal(20, converted.Spread!.Value.Percent, 12);
        Assert.Null(converted.PhSpread);
        var said = converted.Assumptions[0];
        Assert.Equal("method-conversion", said.Code);
        Assert.All(["20 mg/kg by bray-p1", "32 mg/kg by mehlich-3 (icp)", "r² 0.9", "20 % (our widening", "another factor"], words => Assert.Contains(words, said.Text, StringComparison.Ordinal));
        Assert.Contains(converted.Assumptions, a => a.Code == "conversion-lime-not-known");
    }

    [Theory]
    [InlineData(5, null)]
    [InlineData(4.9, "conversion-out-of-range")]
    [InlineData(100, null)]
    [InlineData(100.1, "conversion-out-of-range")]
    public void Outside_the_published_range_there_is_no_result(double value, string? code) => Assert.Equal(code, CodeOf(Convert(Phosphorus((decimal)value), BrayToPlasma)));

    [Theory]
    [InlineData(7.4, null)]
    [InlineData(7.5, "conversion-on-calcareous-soil")]
    public void An_acid_extractant_is_not_converted_where_lime_uses_it_up(double ph, string? code) =>
        Assert.Equal(code, CodeOf(MethodConversionCalculation.Convert(Soil(Phosphorus(20), Ph((decimal)ph, Procedure.PhWater11)), BrayToPlasma, null)));

    [Theory]
    [InlineData(true, "conversion-on-calcareous-soil")]
    [InlineData(false, null)]
    public void Free_lime_decides_as_well(bool freeLime, string? code) =>
        Assert.Equal(code, CodeOf(MethodConversionCalculation.Convert(Soil(Phosphorus(20)) with { FreeLime = freeLime }, BrayToPlasma, null)));

    [Fact]
    public void Another_extractant_another_detection_and_no_detection_are_refused()
    {
        Assert.Equal("conversion-for-another-method", CodeOf(Convert(Phosphorus(20, Extractant.Olsen), BrayToPlasma)));
        Assert.Equal("conversion-for-another-detection", CodeOf(Convert(Phosphorus(20, Extractant.Mehlich3, Detection.Colorimetric), PlasmaToColour)));
        Assert.Equal("conversion-for-another-detection", CodeOf(Convert(Phosphorus(20, Extractant.Mehlich3), PlasmaToColour)));
        Assert.Equal("conversion-without-reading", CodeOf(MethodConversionCalculation.Convert(Soil(), BrayToPlasma, null)));
    }

    [Fact]
    public void A_published_warning_is_a_refusal_with_its_reason()
    {
        var refused = Convert(Phosphorus(20, Extractant.Mehlich3, Detection.Icp), PlasmaToColour).Reason;

        Assert.Equal("conversion-warned-against", refused.Code);
        Assert.Contains("the two are different tests", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Less_than_and_more_than_stay_so()
    {
        Assert.Equal("< 17", Convert(Phosphorus(10) with { Amount = Amount.Below(10) }, BrayToPlasma).Value.Reading.Amount.ToString());
        Assert.Equal("> 92", Convert(Phosphorus(60) with { Amount = Amount.Above(60) }, BrayToPlasma).Value.Reading.Amount.ToString());
    }

    [Fact]
    public void Another_unit_of_mass_is_turned_first_and_volume_never()
    {
        var perAcre = Convert(Phosphorus(40) with { Unit = ReportingUnit.PoundsPerAcre }, BrayToPlasma).Value;

        Assert.Equal(32.0m, perAcre.Reading.Amount.Number);
        Assert.Contains(perAcre.Assumptions, a => a.Code == "pounds-per-acre-factor");
        Assert.Equal("unit-not-convertible", CodeOf(Convert(Phosphorus(40) with { Unit = ReportingUnit.MilligramsPerCubicDecimetre }, BrayToPlasma)));
        Assert.Equal("unit-not-convertible", CodeOf(Convert(Phosphorus(40) with { Unit = ReportingUnit.Index }, BrayToPlasma)));
    }

    [Fact]
    public void A_pH_carries_its_error_in_pH_units_and_stays_on_the_scale()
    {
        var converted = MethodConversionCalculation.Convert(Soil(Ph(5.4m, Procedure.PhCalciumChloride)), SaltToWater, null).Value;

        Assert.Equal(6.00m, converted.Reading.Amount.Number);
        Assert.Equal(0.3, converted.PhSpread!.Value.PhUnits, 12);
        Assert.Null(converted.Spread);
        Assert.Equal("conversion-out-of-range", CodeOf(MethodConversionCalculation.Convert(Soil(Ph(13.5m, Procedure.PhCalciumChloride)), SaltToWater, null)));
    }

    [Fact]
    public void The_working_shows_the_line_and_changes_no_number()
    {
        var working = new WorkingSheet();

        var shown = MethodConversionCalculation.Convert(Soil(Phosphorus(20)), BrayToPlasma, working).Value;

        Assert.Equal("method-conversion", Assert.Single(working.Lines).Formula);
        Assert.Equal(Convert(Phosphorus(20), BrayToPlasma).Value.Reading.Amount, shown.Reading.Amount);
    }

    private static Answer<ReadingByAnotherMethod> Convert(Reading reading, MethodConversion conversion) => MethodConversionCalculation.Convert(Soil(reading), conversion, null);

    private static string? CodeOf(Answer<ReadingByAnotherMethod> answer) => answer.IsGiven ? null : answer.Reason.Code;

    private static SoilTest Soil(params Reading[] readings) => new("s1", null, null, null, null, null, null, readings, []);

    private static Reading Phosphorus(decimal value, Extractant extractant = Extractant.BrayP1, Detection? detection = null) =>
        new(Analyte.P, Amount.Measured(value), ReportingUnit.MilligramsPerKilogram, Method.Extracted(extractant, detection), "P line");

    private static Reading Ph(decimal value, Procedure procedure) => new(Analyte.Ph, Amount.Measured(value), ReportingUnit.PhUnits, Method.By(procedure), "pH line");
}
