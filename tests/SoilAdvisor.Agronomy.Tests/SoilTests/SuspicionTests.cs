using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Tests.Cations;
using SoilAdvisor.Agronomy.Working;
using static SoilAdvisor.Agronomy.Tests.Cations.InventedCations;

namespace SoilAdvisor.Agronomy.Tests.SoilTests;

public sealed class SuspicionTests
{
    // Starts of the buffers: Mehlich 6.6, SMP and Sikora 7.5, Adams-Evans and Moore-Sikora 8.0; a meter is allowed 0.2.
    [Theory]
    [InlineData(Procedure.BufferMehlich, 6.6, "")]
    [InlineData(Procedure.BufferMehlich, 6.61, "buffer-just-above-its-start")]
    [InlineData(Procedure.BufferMehlich, 6.8, "buffer-just-above-its-start")]
    [InlineData(Procedure.BufferMehlich, 6.81, "buffer-above-its-start")]
    [InlineData(Procedure.BufferModifiedMehlich, 7.2, "buffer-above-its-start")]
    [InlineData(Procedure.BufferSmp, 7.5, "")]
    [InlineData(Procedure.BufferSmp, 7.7, "buffer-just-above-its-start")]
    [InlineData(Procedure.BufferSmp, 7.71, "buffer-above-its-start")]
    [InlineData(Procedure.BufferSikora, 7.8, "buffer-above-its-start")]
    [InlineData(Procedure.BufferAdamsEvans, 8.0, "")]
    [InlineData(Procedure.BufferAdamsEvans, 8.21, "buffer-above-its-start")]
    [InlineData(Procedure.BufferMooreSikora, 8.2, "buffer-just-above-its-start")]
    [InlineData(Procedure.BufferWoodruff, 9.0, "")]
    [InlineData(null, 9.0, "")]
    public void A_soil_can_only_lower_a_buffer(Procedure? name, double value, string code)
    {
        var test = Soil(Buffer((decimal)value, name));

        Assert.Equal(code, Codes(test));
        Assert.Equal(code == "buffer-above-its-start", SoilTestSuspicions.ImpossibleIn(test).Count == 1);
    }

    [Theory]
    [InlineData(Procedure.BufferMehlich, 3.0, "")]
    [InlineData(Procedure.BufferMehlich, 2.99, "buffer-below-its-range")]
    [InlineData(Procedure.BufferSmp, 4.5, "")]
    [InlineData(Procedure.BufferSikora, 4.49, "buffer-below-its-range")]
    [InlineData(Procedure.BufferAdamsEvans, 6.37, "")]
    [InlineData(Procedure.BufferMooreSikora, 6.36, "buffer-below-its-range")]
    public void A_buffer_far_down_is_doubted(Procedure name, double value, string code) => Assert.Equal(code, Codes(Soil(Buffer((decimal)value, name))));

    [Theory]
    [InlineData(6.5, 6.0, Procedure.BufferSmp, "")]
    [InlineData(6.5, 5.99, Procedure.BufferSmp, "buffer-below-soil-ph")]
    [InlineData(7.2, 6.1, Procedure.BufferMehlich, "")]
    [InlineData(7.2, 6.09, Procedure.BufferMehlich, "buffer-below-soil-ph")]
    public void A_buffer_does_not_end_under_the_soil(double soil, double buffer, Procedure name, string code) =>
        Assert.Equal(code, Codes(Soil(Ph((decimal)soil), Buffer((decimal)buffer, name))));

    // Exact weights of the unit change: calcium 2003.9 mg/kg is 10 meq/100 g; magnesium and potassium are nothing.
    [Theory]
    [InlineData(6.67, "")]
    [InlineData(6.66, "cec-far-from-cations")]
    [InlineData(6.26, "cec-far-from-cations")]
    [InlineData(6.25, "pounds-per-acre-read-as-ppm")]
    [InlineData(4.17, "pounds-per-acre-read-as-ppm")]
    [InlineData(4.16, "cec-far-from-cations")]
    public void Cations_that_fit_only_when_halved_look_like_pounds_an_acre(double capacity, string code) =>
        Assert.Equal(code, Codes(Soil(Cation(Analyte.Ca, 2003.9m), Cation(Analyte.Mg, 0), Cation(Analyte.K, 0), Cec((decimal)capacity), Ph(6.0m))));

    // Calcium 4007.8 lb/acre is 10 meq/100 g; no acidity is counted at pH 7.1.
    [Theory]
    [InlineData(14.9, "")]
    [InlineData(15.1, "cec-far-from-cations")]
    [InlineData(16.1, "ppm-read-as-pounds-per-acre")]
    [InlineData(23.9, "ppm-read-as-pounds-per-acre")]
    [InlineData(24.1, "cec-far-from-cations")]
    public void Cations_that_fit_only_when_doubled_look_like_ppm(double capacity, string code) =>
        Assert.Equal(code, Codes(Soil(Cation(Analyte.Ca, 4000, ReportingUnit.PoundsPerAcre), Cation(Analyte.Mg, 0, ReportingUnit.PoundsPerAcre), Cation(Analyte.K, 0, ReportingUnit.PoundsPerAcre), Cec((decimal)capacity), Ph(7.1m))));

    [Theory]
    [InlineData(7.4, null)]
    [InlineData(7.0, true)]
    public void Where_lime_counts_as_calcium_the_sum_proves_nothing(double ph, bool? freeLime) =>
        Assert.Equal("", Codes(Soil([.. Bases(), Cec(3), Ph((decimal)ph)]) with { FreeLime = freeLime }));

    [Theory]
    [InlineData(6.1, null, "cec-far-from-cations")]
    [InlineData(6.1, Procedure.Displacement, "")]
    public void A_displaced_capacity_may_lie_above_the_sum(double ph, Procedure? method, string code) =>
        Assert.Equal(code, Codes(Soil([.. Bases(), Cec(13.5m) with { Method = Method.By(method) }, Ph((decimal)ph), PrintedAcidity(1)])));

    [Theory]
    [InlineData(500, 500, "")]
    [InlineData(500, 501, "magnesium-above-calcium")]
    public void More_magnesium_than_calcium_looks_like_swapped_columns(double calcium, double magnesium, string code) =>
        Assert.Equal(code, Codes(Soil(Cation(Analyte.Ca, (decimal)calcium), Cation(Analyte.Mg, (decimal)magnesium))));

    [Theory]
    [InlineData(1.99, "percent-read-as-ppm")]
    [InlineData(2, "milliequivalents-read-as-ppm")]
    [InlineData(29.9, "milliequivalents-read-as-ppm")]
    [InlineData(30, "")]
    public void Hardly_any_calcium_looks_like_another_unit(double calcium, string code) => Assert.Equal(code, Codes(Soil(Cation(Analyte.Ca, (decimal)calcium))));

    [Theory]
    [InlineData(9, 9, "index-read-as-concentration")]
    [InlineData(9, 10, "")]
    [InlineData(10, 9, "")]
    [InlineData(2, 2.5, "")]
    public void Small_whole_numbers_look_like_an_index(double phosphorus, double potassium, string code) =>
        Assert.Equal(code, Codes(Soil(Cation(Analyte.P, (decimal)phosphorus, ReportingUnit.MilligramsPerCubicDecimetre, Extractant.Olsen), Cation(Analyte.K, (decimal)potassium, ReportingUnit.MilligramsPerCubicDecimetre, Extractant.AmmoniumAcetate))));

    [Theory]
    [InlineData(ReportingUnit.KilogramsPerHectare, Basis.Element, "oxide-read-as-element")]
    [InlineData(ReportingUnit.KilogramsPerHectare, Basis.Oxide, "")]
    [InlineData(ReportingUnit.MilligramsPerKilogram, Basis.Element, "")]
    public void Phosphorus_a_hectare_may_be_phosphate(ReportingUnit unit, Basis basis, string code) =>
        Assert.Equal(code, Codes(Soil(Cation(Analyte.P, 120, unit) with { Method = new Method(Extractant.Mehlich3, null, null, basis) })));

    [Theory]
    [InlineData(Analyte.OrganicMatter, ReportingUnit.Percent, 0.09, "fraction-read-as-percent")]
    [InlineData(Analyte.OrganicMatter, ReportingUnit.Percent, 0.1, "")]
    [InlineData(Analyte.NitrateN, ReportingUnit.MilligramsPerKilogram, 120, "")]
    [InlineData(Analyte.NitrateN, ReportingUnit.MilligramsPerKilogram, 121, "nitrate-read-as-nitrate-nitrogen")]
    [InlineData(Analyte.ElectricalConductivity, ReportingUnit.DecisiemensPerMetre, 20, "")]
    [InlineData(Analyte.ElectricalConductivity, ReportingUnit.DecisiemensPerMetre, 20.1, "microsiemens-read-as-decisiemens")]
    [InlineData(Analyte.Ph, ReportingUnit.PhUnits, 3.5, "")]
    [InlineData(Analyte.Ph, ReportingUnit.PhUnits, 3.4, "ph-unusual")]
    [InlineData(Analyte.Ph, ReportingUnit.PhUnits, 9.5, "")]
    [InlineData(Analyte.Ph, ReportingUnit.PhUnits, 9.6, "ph-unusual")]
    public void A_number_far_from_any_farm_is_doubted(Analyte analyte, ReportingUnit unit, double value, string code) =>
        Assert.Equal(code, Codes(Soil(new Reading(analyte, Amount.Measured((decimal)value), unit, default, "line"))));

    [Fact]
    public void A_result_that_is_open_or_missing_is_doubted_by_nothing()
    {
        Assert.Equal("", Codes(Soil(Cation(Analyte.Ca, 1) with { Amount = Amount.Below(5) }, Buffer(9, Procedure.BufferSmp) with { Amount = Amount.Above(9) }, Ph(2) with { Amount = default })));
        Assert.Equal("", Codes(Soil()));
    }

    [Fact]
    public void The_impossible_comes_first_and_a_doubt_points_at_its_lines()
    {
        var found = SoilTestSuspicions.Of(Soil(Cation(Analyte.Ca, 1), Buffer(9, Procedure.BufferSmp)), Rules);

        Assert.Equal([Severity.Impossible, Severity.Suspicion], found.Select(s => s.Severity));
        Assert.Equal("buffer line", found[0].Readings[0].Where);
        Assert.Equal("Ca line", found[1].Readings[0].Where);
        Assert.All(found, s => Assert.NotEqual("", s.Suggestion));
    }

    [Theory]
    [InlineData(Analyte.Ph, 14, ReportingUnit.PhUnits, null)]
    [InlineData(Analyte.Ph, 14.1, ReportingUnit.PhUnits, "ph-range")]
    [InlineData(Analyte.P, -0.1, ReportingUnit.MilligramsPerKilogram, "negative-value")]
    [InlineData(Analyte.P, 10000, ReportingUnit.MilligramsPerKilogram, null)]
    [InlineData(Analyte.P, 10001, ReportingUnit.MilligramsPerKilogram, "impossible-value")]
    [InlineData(Analyte.Ca, 100001, ReportingUnit.MilligramsPerKilogram, "impossible-value")]
    [InlineData(Analyte.OrganicMatter, 100.1, ReportingUnit.Percent, "impossible-value")]
    [InlineData(Analyte.Acidity, 301, ReportingUnit.MilliequivalentsPer100CubicCentimetres, "impossible-value")]
    [InlineData(Analyte.P, 99999, ReportingUnit.Index, null)]
    public void What_no_soil_can_be_is_refused(Analyte analyte, double value, ReportingUnit unit, string? code) =>
        Assert.Equal(code, ReadingLimits.WhyImpossible(analyte, Amount.Measured((decimal)value), unit)?.Code);

    private static string Codes(SoilTest test) => string.Join(' ', SoilTestSuspicions.Of(test, Rules).Select(s => s.Code));

    private static Reading Cec(decimal value) => new(Analyte.CationExchangeCapacity, Amount.Measured(value), ReportingUnit.MilliequivalentsPer100Grams, default, "cec line");
}
