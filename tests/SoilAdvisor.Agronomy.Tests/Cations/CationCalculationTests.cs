using CsCheck;
using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static SoilAdvisor.Agronomy.Tests.Cations.InventedCations;

namespace SoilAdvisor.Agronomy.Tests.Cations;

public sealed class CationCalculationTests
{
    // By head: 5 + 2 + 0.5 = 7.5 bases, 8 × (8.00 − 7.6875) = 2.5 acidity, 10 in all: 50, 20, 5, 25 %.
    [Fact]
    public void The_sum_the_saturations_and_the_ratio_are_those_worked_by_hand()
    {
        var balance = Balance(Soil([.. Bases(), Ph(5.8m), Buffer(7.6875m, Procedure.BufferAdamsEvans)]));

        Assert.Equal("meq/100g", balance.Unit);
        Assert.Equal(7.5, balance.Bases, 12);
        Assert.Equal(10, balance.Capacity, 12);
        Assert.Equal([50, 20, 5], balance.Cations.Select(c => Math.Round(c.Saturation.Percent, 9)));
        Assert.Equal(25, balance.Acidity.Saturation.Percent, 9);
        Assert.Equal(75, balance.BaseSaturation.Percent, 9);
        Assert.Equal(2.5, balance.CalciumToMagnesium!.Value, 12);
        Assert.Equal("even", balance.Weights.Id);
        Assert.Contains(balance.Assumptions, a => a.Code == "sodium-left-out");
        Assert.NotEmpty(balance.Trials);
    }

    [Theory]
    [InlineData(Procedure.BufferMooreSikora, 7.6875, 2.5)]
    [InlineData(Procedure.BufferSmp, 6.75, 3.0)]
    public void Each_buffer_counts_acidity_by_its_own_rule(Procedure buffer, double value, double acidity) =>
        Assert.Equal(acidity, Balance(Soil([.. Bases(), Ph(5.8m), Buffer((decimal)value, buffer)])).Acidity.Milliequivalents, 12);

    [Theory]
    [InlineData(7.99, false)]
    [InlineData(8.00, true)]
    [InlineData(8.10, true)]
    public void A_buffer_at_or_above_its_start_counts_none_and_says_so(double value, bool atStart)
    {
        var balance = Balance(Soil([.. Bases(), Ph(6.8m), Buffer((decimal)value, Procedure.BufferAdamsEvans)]));

        Assert.Equal(atStart, balance.Assumptions.Any(a => a.Code == "buffer-at-start"));
        Assert.Equal(atStart, balance.Acidity.Milliequivalents == 0);
        Assert.Equal(atStart, balance.Assumptions.Any(a => a.Code == "no-acidity-counted"));
    }

    [Fact]
    public void The_laboratorys_own_acidity_goes_before_a_buffer()
    {
        var balance = Balance(Soil([.. Bases(), Ph(5.8m), Buffer(7.0m, Procedure.BufferAdamsEvans), PrintedAcidity(1.5m)]));

        Assert.Equal(1.5, balance.Acidity.Milliequivalents);
        Assert.Equal("the laboratory's own acidity", balance.Acidity.From);
    }

    // Volume: 5 + 2 + 0.5 by the same weights, 4 × (6.6 − 6.1) = 2.0; sodium stays out.
    [Fact]
    public void By_volume_the_mehlich_buffer_is_used_and_sodium_left_out()
    {
        var balance = Balance(Soil([.. Bases(ReportingUnit.MilligramsPerCubicDecimetre), Cation(Analyte.Na, 200, ReportingUnit.MilligramsPerCubicDecimetre), Ph(5.8m), Buffer(6.1m, Procedure.BufferMehlich)]));

        Assert.Equal("meq/100cm3", balance.Unit);
        Assert.Equal(9.5, balance.Capacity, 12);
        Assert.Equal(3, balance.Cations.Count);
        Assert.Empty(balance.Warnings);
    }

    [Theory]
    [InlineData(ReportingUnit.MilligramsPerKilogram, Procedure.BufferMehlich, 6.1)]
    [InlineData(ReportingUnit.MilligramsPerCubicDecimetre, Procedure.BufferAdamsEvans, 7.5)]
    [InlineData(ReportingUnit.MilligramsPerCubicDecimetre, Procedure.BufferSmp, 6.5)]
    public void Mass_and_volume_are_never_added(ReportingUnit cations, Procedure buffer, double value) =>
        Assert.Equal("cation-basis-mixed", Refusal(Soil([.. Bases(cations), Ph(5.8m), Buffer((decimal)value, buffer)])).Code);

    [Theory]
    [InlineData(ReportingUnit.MilligramsPerKilogram, ReportingUnit.MilliequivalentsPer100CubicCentimetres)]
    [InlineData(ReportingUnit.MilligramsPerCubicDecimetre, ReportingUnit.MilliequivalentsPer100Grams)]
    public void A_printed_acidity_of_the_other_basis_is_refused(ReportingUnit cations, ReportingUnit acidity) =>
        Assert.Equal("cation-basis-mixed", Refusal(Soil([.. Bases(cations), Ph(5.8m), PrintedAcidity(1, acidity)])).Code);

    [Fact]
    public void Cations_of_both_bases_in_one_report_are_refused()
    {
        var mixed = new[] { Cation(Analyte.Ca, 1000), Cation(Analyte.Mg, 200), Cation(Analyte.K, 200, ReportingUnit.MilligramsPerCubicDecimetre) };

        Assert.Equal("unit-not-convertible", Refusal(Soil([.. mixed, Ph(5.8m), PrintedAcidity(1)])).Code);
    }

    [Fact]
    public void Sodium_in_the_same_extract_is_counted()
    {
        var balance = Balance(Soil([.. Bases(), Cation(Analyte.Na, 100), Ph(5.8m), PrintedAcidity(2)]));

        Assert.Equal(10, balance.Capacity, 12);
        Assert.Equal(5, balance.Cations[3].Saturation.Percent, 9);
        Assert.DoesNotContain(balance.Assumptions, a => a.Code == "sodium-left-out");
    }

    [Theory]
    [InlineData(7.3, null)]
    [InlineData(7.31, "ph-above-cation-limit")]
    public void Above_its_limit_of_pH_there_is_no_sum(double ph, string? code) => Assert.Equal(code, CodeOf(Soil([.. Bases(), Ph((decimal)ph)])));

    [Theory]
    [InlineData(7.0, null)]
    [InlineData(6.99, "buffer-missing")]
    public void Without_a_buffer_only_a_soil_that_is_not_acid_has_a_sum(double ph, string? code)
    {
        var soil = Soil([.. Bases(), Ph((decimal)ph)]);

        Assert.Equal(code, CodeOf(soil));
        if (code is null)
        {
            Assert.Contains(Balance(soil).Assumptions, a => a.Code == "no-buffer-in-neutral-soil");
        }
    }

    [Fact]
    public void Free_lime_leaves_no_sum() => Assert.Equal("free-lime-in-cations", Refusal(Soil([.. Bases(), Ph(7.1m)]) with { FreeLime = true }).Code);

    [Theory]
    [InlineData(4.0, Procedure.SaltsSaturatedPaste, null)]
    [InlineData(4.1, Procedure.SaltsSaturatedPaste, "saline-soil")]
    [InlineData(2.0, Procedure.Salts11, null)]
    [InlineData(2.1, Procedure.Salts11, "saline-soil")]
    [InlineData(0.6, Procedure.Salts12, null)]
    [InlineData(0.61, Procedure.Salts12, "saline-soil")]
    [InlineData(0.6, null, null)]
    [InlineData(0.61, null, "saline-soil")]
    public void A_saline_soil_has_no_sum(double salts, Procedure? extract, string? code) =>
        Assert.Equal(code, CodeOf(Soil([.. Bases(), Ph(7.1m), Salts((decimal)salts, extract)])));

    [Fact]
    public void Salts_that_nobody_measured_are_an_assumption() =>
        Assert.Contains(Balance(Soil([.. Bases(), Ph(7.1m)])).Assumptions, a => a.Code == "salts-not-measured");

    [Theory]
    [InlineData(Analyte.Ca)]
    [InlineData(Analyte.Mg)]
    [InlineData(Analyte.K)]
    public void A_missing_or_open_cation_is_named(Analyte cation)
    {
        var without = Soil([.. Bases().Where(r => r.Analyte != cation), Ph(7.1m)]);
        var open = Soil([.. Bases().Select(r => r.Analyte == cation ? r with { Amount = Amount.Below(5) } : r), Ph(7.1m)]);

        Assert.Equal("cations-missing", Refusal(without).Code);
        Assert.Contains($" {Words.Analytes.IdOf(cation)} was not", Refusal(open).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Cations_of_two_extractants_are_not_summed() =>
        Assert.Equal("cation-extractants-mixed", Refusal(Soil([.. Bases().Take(2), Cation(Analyte.K, 200, extractant: Extractant.AmmoniumAcetate), Ph(7.1m)])).Code);

    [Theory]
    [InlineData(Extractant.Olsen, "cation-extractant")]
    [InlineData(Extractant.Morgan, "cation-extractant")]
    [InlineData(Extractant.Water, "cation-extractant")]
    [InlineData(Extractant.AmmoniumAcetate, null)]
    [InlineData(Extractant.Mehlich1, null)]
    [InlineData(Extractant.ModifiedMorgan, null)]
    public void Only_extractants_of_exchangeable_cations_are_summed(Extractant extractant, string? code) =>
        Assert.Equal(code, CodeOf(Soil([.. Bases(extractant: extractant), Ph(7.1m)])));

    [Fact]
    public void A_pH_in_salt_solution_a_missing_pH_and_a_buffer_without_a_name_or_a_rule_are_refused()
    {
        Assert.Equal("salt-ph", Refusal(Soil([.. Bases(), Ph(6.0m, Procedure.PhCalciumChloride)])).Code);
        Assert.Equal("ph-missing", Refusal(Soil(Bases())).Code);
        Assert.Equal("buffer-name-missing", Refusal(Soil([.. Bases(), Ph(6.0m), Buffer(7.0m, null)])).Code);
        Assert.Equal("buffer-not-covered", Refusal(Soil([.. Bases(), Ph(6.0m), Buffer(7.0m, Procedure.BufferSikora)])).Code);
        Assert.Equal("buffer-open", Refusal(Soil([.. Bases(), Ph(6.0m), Buffer(7.0m, Procedure.BufferSmp) with { Amount = Amount.Above(7.0m) }])).Code);
        Assert.Equal("unit-not-convertible", Refusal(Soil([.. Bases(ReportingUnit.Index), Ph(7.1m)])).Code);
        Assert.Equal("no-cations", Refusal(Soil([.. Bases(times: 0), Ph(7.1m)])).Code);
    }

    [Fact]
    public void Weights_of_an_acre_give_what_the_same_weights_by_mass_give()
    {
        var soil = Soil([.. Bases(ReportingUnit.PoundsPerAcre, times: 2), Ph(5.8m), PrintedAcidity(2.5m)]);

        var byAcre = CationCalculation.For(soil, Rules, PerAcre, null).Value;
        var byMass = CationCalculation.For(soil, Rules, Even, null).Value;

        Assert.Equal(10, byAcre.Capacity, 12);
        Assert.Equal(10, byMass.Capacity, 12);
        Assert.DoesNotContain(byAcre.Assumptions, a => a.Code == "pounds-per-acre-factor");
        Assert.Single(byMass.Assumptions, a => a.Code == "pounds-per-acre-factor");
    }

    [Theory]
    [InlineData(2.0, null)]
    [InlineData(1.8, "weights-not-for-factor")]
    public void Weights_of_an_acre_serve_no_laboratory_that_counts_an_acre_differently(double factor, string? code)
    {
        var soil = Soil([.. Bases(ReportingUnit.PoundsPerAcre), Ph(7.1m)]) with { PoundsPerAcreFactor = (decimal)factor };

        var answer = CationCalculation.For(soil, Rules, PerAcre, null);

        Assert.Equal(code, answer.IsGiven ? null : answer.Reason.Code);
    }

    [Fact]
    public void Weights_of_an_acre_do_not_serve_volume() =>
        Assert.Equal("weights-not-for-volume", CationCalculation.For(Soil([.. Bases(ReportingUnit.MilligramsPerCubicDecimetre), Ph(7.1m)]), Rules, PerAcre, null).Reason.Code);

    [Fact]
    public void Charges_printed_by_the_laboratory_are_taken_as_they_are()
    {
        var soil = Soil([Cation(Analyte.Ca, 5, ReportingUnit.MilliequivalentsPer100Grams), Cation(Analyte.Mg, 2, ReportingUnit.MilliequivalentsPer100Grams), Cation(Analyte.K, 0.5m, ReportingUnit.MilliequivalentsPer100Grams), Ph(5.8m), PrintedAcidity(2.5m)]);

        Assert.Equal(10, Balance(soil).Capacity, 12);
    }

    // On charge: calcium 300 / 200 = 1.5; magnesium 150 / 100 = 1.5 and 149 / 100 = 1.49.
    [Theory]
    [InlineData(300, 150, "magnesium-not-below-calcium")]
    [InlineData(300, 149, "")]
    [InlineData(299, 36, "calcium-low")]
    [InlineData(300, 35, "")]
    [InlineData(300, 34.9, "magnesium-low")]
    [InlineData(299, 34, "calcium-low magnesium-low")]
    public void Only_published_extremes_warn(double calcium, double magnesium, string codes)
    {
        var balance = Balance(Soil(Cation(Analyte.Ca, (decimal)calcium), Cation(Analyte.Mg, (decimal)magnesium), Cation(Analyte.K, 100), Ph(7.1m)));

        Assert.Equal(codes, string.Join(' ', balance.Warnings.Select(w => w.Code)));
    }

    [Fact]
    public void A_soil_without_magnesium_has_no_ratio()
    {
        var balance = Balance(Soil(Cation(Analyte.Ca, 1000), Cation(Analyte.Mg, 0), Cation(Analyte.K, 100), Ph(7.1m)));

        Assert.Null(balance.CalciumToMagnesium);
        Assert.DoesNotContain(balance.Warnings, w => w.Code == "magnesium-not-below-calcium");
    }

    [Fact]
    public void Printed_ranges_are_those_of_the_same_extractant()
    {
        var reference = Assert.Single(Balance(Soil([.. Bases(), Ph(7.1m)])).References);

        Assert.Equal((50m, 80m), (reference.Low, reference.High));
    }

    [Fact]
    public void Saturations_fill_the_exchange_and_the_working_changes_no_bit() =>
        Gen.Select(Gen.Decimal[1, 5000], Gen.Decimal[0, 900], Gen.Decimal[0, 900], Gen.Decimal[5, 8.5m]).Sample((calcium, magnesium, potassium, buffer) =>
        {
            var soil = Soil(Cation(Analyte.Ca, calcium), Cation(Analyte.Mg, magnesium), Cation(Analyte.K, potassium), Ph(6.0m), Buffer(buffer, Procedure.BufferAdamsEvans));
            var working = new WorkingSheet();

            var silent = Balance(soil);
            var shown = CationCalculation.For(soil, Rules, null, working).Value;

            Assert.Equal(100, silent.Cations.Sum(c => c.Saturation.Percent) + silent.Acidity.Saturation.Percent, 9);
            Assert.InRange(silent.BaseSaturation.Percent, 0, 100.0000001);
            Assert.Equal(BitConverter.DoubleToInt64Bits(silent.Capacity), BitConverter.DoubleToInt64Bits(shown.Capacity));
            Assert.Contains(working.Lines, l => l.Formula == "exchange-capacity-sum");
            Assert.True(silent.Acidity.Milliequivalents >= 0);
        });

    [Fact]
    public void More_of_a_cation_never_lowers_its_own_saturation_and_never_raises_anothers() =>
        Gen.Select(Gen.Decimal[1, 5000], Gen.Decimal[1, 900], Gen.Decimal[0.1m, 500]).Sample((calcium, magnesium, more) =>
        {
            CationBalance With(decimal ca) => Balance(Soil(Cation(Analyte.Ca, ca), Cation(Analyte.Mg, magnesium), Cation(Analyte.K, 100), Ph(6.0m), PrintedAcidity(2)));
            var (before, after) = (With(calcium), With(calcium + more));

            Assert.True(after.Cations[0].Saturation.Percent >= before.Cations[0].Saturation.Percent);
            Assert.True(after.Cations[1].Saturation.Percent <= before.Cations[1].Saturation.Percent);
        });

    private static CationBalance Balance(SoilTest soil) => CationCalculation.For(soil, Rules, null, null).Value;

    private static Refusal Refusal(SoilTest soil) => CationCalculation.For(soil, Rules, null, null).Reason;

    private static string? CodeOf(SoilTest soil) => CationCalculation.For(soil, Rules, null, null) is { IsGiven: false } refused ? refused.Reason.Code : null;
}
