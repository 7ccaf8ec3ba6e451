using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Tests.SoilTests;

public sealed class ReadingConversionTests
{
    [Fact]
    public void The_same_unit_leaves_every_digit_alone()
    {
        var converted = ReadingConversion.To(Phosphorus(14.0m, ReportingUnit.MilligramsPerKilogram), ReportingUnit.MilligramsPerKilogram, null).Value;

        Assert.Equal("14.0", converted.Amount.ToString());
        Assert.Empty(converted.Assumptions);
    }

    [Fact]
    public void One_mg_a_kg_counts_as_two_pounds_an_acre_and_says_so()
    {
        var converted = ReadingConversion.To(Phosphorus(24m, ReportingUnit.MilligramsPerKilogram), ReportingUnit.PoundsPerAcre, null).Value;

        Assert.Equal(48m, converted.Amount.Number);
        Assert.Equal("pounds-per-acre-factor", Assert.Single(converted.Assumptions).Code);
    }

    [Fact]
    public void The_laboratorys_own_factor_goes_before_ours_without_an_assumption()
    {
        var converted = ReadingConversion.To(Phosphorus(24m, ReportingUnit.MilligramsPerKilogram), ReportingUnit.PoundsPerAcre, 1.8m).Value;

        Assert.Equal(43.2m, Math.Round(converted.Amount.Number, 10));
        Assert.Empty(converted.Assumptions);
    }

    [Fact]
    public void By_volume_is_never_turned_into_by_mass()
    {
        var refused = ReadingConversion.To(Phosphorus(24m, ReportingUnit.MilligramsPerCubicDecimetre), ReportingUnit.MilligramsPerKilogram, null);

        Assert.Equal("unit-not-convertible", refused.Reason.Code);
        Assert.Contains("density", refused.Reason.Suggestion, StringComparison.Ordinal);
    }

    // Standard atomic weights: 100 mg/kg P2O5 hold 43.643 mg/kg P.
    [Fact]
    public void Phosphate_becomes_phosphorus_by_its_atoms()
    {
        var reading = new Reading(Analyte.P, Amount.Measured(100m), ReportingUnit.MilligramsPerKilogram, new Method(Extractant.Mehlich3, Detection.Icp, null, Basis.Oxide), "P2O5");

        Assert.Equal(43.643m, Math.Round(ReadingConversion.To(reading, ReportingUnit.MilligramsPerKilogram, null).Value.Amount.Number, 3));
    }

    // Standard atomic weights over charge: Ca 200.39, Mg 121.525, K 390.983, Na 229.898 mg/kg for 1 meq/100 g.
    [Theory]
    [InlineData(Analyte.Ca, 200.39)]
    [InlineData(Analyte.Mg, 121.525)]
    [InlineData(Analyte.K, 390.983)]
    [InlineData(Analyte.Na, 229.8977)]
    public void Milliequivalents_become_mass_by_atomic_weight_and_charge(Analyte analyte, double expected)
    {
        var reading = new Reading(analyte, Amount.Measured(1m), ReportingUnit.MilliequivalentsPer100Grams, Method.Extracted(Extractant.AmmoniumAcetate), "x");

        Assert.Equal((decimal)expected, ReadingConversion.To(reading, ReportingUnit.MilligramsPerKilogram, null).Value.Amount.Number);
    }

    [Fact]
    public void Phosphorus_has_no_milliequivalents()
    {
        var refused = ReadingConversion.To(Phosphorus(1m, ReportingUnit.MilliequivalentsPer100Grams), ReportingUnit.MilligramsPerKilogram, null);

        Assert.Equal("unit-not-convertible", refused.Reason.Code);
    }

    [Fact]
    public void Less_than_stays_less_than()
    {
        var reading = new Reading(Analyte.P, Amount.Below(5m), ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Mehlich3, Detection.Icp), "x");

        Assert.Equal("< 10", ReadingConversion.To(reading, ReportingUnit.PoundsPerAcre, 2m).Value.Amount.ToString());
    }

    private static Reading Phosphorus(decimal value, ReportingUnit unit) =>
        new(Analyte.P, Amount.Measured(value), unit, Method.Extracted(Extractant.Mehlich3, Detection.Icp), "line 2");
}
