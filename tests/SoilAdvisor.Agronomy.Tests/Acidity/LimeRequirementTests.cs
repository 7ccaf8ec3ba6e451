using CsCheck;
using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;
using static SoilAdvisor.Agronomy.Tests.Acidity.InventedLime;

namespace SoilAdvisor.Agronomy.Tests.Acidity;

public sealed class LimeRequirementTests
{
    // By hand: acidity 4 × (6.6 − 6.2) = 1.6; (6.0 − 5.4) / (6.6 − 5.4) = 0.5; 0.8 ton/acre is 1600 lb.
    [Fact]
    public void The_mehlich_equation_counts_tons_of_limestone()
    {
        var lime = Lime(Soil(5.4m, 6.2m, Procedure.BufferMehlich), 6.0m).Value;

        Assert.Equal(1600, lime.Rate.PoundsPerAcre, 9);
        Assert.Equal(0.8, (double)lime.PrintedValue, 9);
        Assert.Equal(("north-carolina", "ton/acre"), (lime.Method, lime.PrintedUnit));
        Assert.Contains(lime.Assumptions, a => a.Code == "lime-basis");
    }

    [Theory]
    [InlineData(5.9, false)]
    [InlineData(6.0, true)]
    [InlineData(6.1, true)]
    public void At_or_above_the_target_no_lime_is_needed_whatever_the_buffer_says(double ph, bool none)
    {
        var lime = Lime(Soil((decimal)ph, 6.0m, Procedure.BufferMehlich), 6.0m).Value;

        Assert.Equal(none, lime.Rate.Amount.IsZero);
        Assert.Equal(none ? "none-needed" : "north-carolina", lime.Method);
    }

    [Fact]
    public void At_the_target_no_buffer_is_asked_for() => Assert.True(Lime(Soil(6.5m), 6.5m).Value.Rate.Amount.IsZero);

    [Theory]
    [InlineData(5.9, false)]
    [InlineData(6.0, true)]
    public void Where_the_source_limes_only_below_a_ph_that_ph_decides(double ph, bool none)
    {
        var lime = LimeRequirementCalculation.For(Soil((decimal)ph, 6.2m, Procedure.BufferMehlich), Target(6.5m, 6.0m), All, null, null, [], null).Value;

        Assert.Equal(none, lime.Rate.Amount.IsZero);
        Assert.Equal(none, lime.Assumptions.Any(a => a.Code == "lime-only-below"));
    }

    // Target 6.5: 840 a meq above 4.0, 2000 lb at or below it. Target 7.0: 1000 a meq.
    [Theory]
    [InlineData(6.0, 6.5, 5040)]
    [InlineData(4.1, 6.5, 3444)]
    [InlineData(4.0, 6.5, 2000)]
    [InlineData(3.0, 6.5, 2000)]
    [InlineData(6.0, 7.0, 6000)]
    [InlineData(6.0, 6.8, 5040)]
    public void The_pennsylvania_rule_reads_the_exchangeable_acidity(double acidity, double target, double expected) =>
        Assert.Equal(expected, Lime(Soil(5.6m, 6.0m, Procedure.BufferModifiedMehlich, InventedLime.Acidity((decimal)acidity)), (decimal)target).Value.Rate.PoundsPerAcre, 9);

    [Fact]
    public void The_undefined_acidity_limit_is_said() =>
        Assert.Contains(Lime(Soil(5.6m, 6.0m, Procedure.BufferModifiedMehlich, InventedLime.Acidity(4.0m)), 6.5m).Value.Assumptions, a => a.Code == "acidity-at-limit");

    [Fact]
    public void Without_an_exchangeable_acidity_the_rule_asks_for_it() =>
        Assert.Equal("acidity-missing", Lime(Soil(5.6m, 6.0m, Procedure.BufferModifiedMehlich), 6.5m).Reason.Code);

    // By hand from the recalled equation: h at 5.1 is 0.6656, at 6.5 is 0.2603; H = 2.4; 1000 × 2.4 / 0.6656 × 0.4053 × 1.5 = 2192 lb (± 3 for the rounded h).
    [Fact]
    public void The_adams_evans_equation_finds_the_acid_saturation_first() =>
        Assert.InRange(Lime(Soil(5.1m, 7.7m, Procedure.BufferAdamsEvans), 6.5m).Value.Rate.PoundsPerAcre, 2189, 2199);

    [Theory]
    [InlineData(7.9, true)]
    [InlineData(8, false)]
    public void Adams_evans_is_refused_on_soils_it_was_not_made_for(double cec, bool given)
    {
        var answer = Lime(Soil(5.1m, 7.7m, Procedure.BufferAdamsEvans, Cec((decimal)cec)), 6.5m);

        Assert.Equal(given, answer.IsGiven);
        Assert.Equal(given ? null : "soil-outside-method", given ? null : answer.Reason.Code);
    }

    [Theory]
    [InlineData(4.4, false)]
    [InlineData(4.5, true)]
    public void Adams_evans_is_refused_below_the_range_of_its_curve(double ph, bool given) =>
        Assert.Equal(given, Lime(Soil((decimal)ph, 7.7m, Procedure.BufferAdamsEvans), 6.5m).IsGiven);

    [Theory]
    [InlineData(6.4, 6.5, 1500, null)]
    [InlineData(6.5, 6.5, 1500, "lime-table-row")]
    [InlineData(6.39, 6.5, 3000, "lime-table-row")]
    [InlineData(6.8, 6.5, 500, null)]
    [InlineData(6.0, 6.5, 3000, null)]
    [InlineData(6.4, 6.2, 400, "lime-table-target")]
    [InlineData(6.4, 6.9, 1500, "lime-table-target")]
    public void A_table_gives_a_printed_cell_and_says_when_it_is_not_the_very_one(double buffer, double target, double expected, string? assumption)
    {
        var lime = Lime(Soil(5.5m, (decimal)buffer, Procedure.BufferSmp), (decimal)target).Value;

        Assert.Equal(expected, lime.Rate.PoundsPerAcre, 9);
        Assert.Equal(assumption is null ? [] : [assumption], lime.Assumptions.Where(a => a.Code.StartsWith("lime-table", StringComparison.Ordinal)).Select(a => a.Code));
    }

    [Fact]
    public void A_target_between_columns_is_never_limed_past() => Assert.True(Lime(Soil(6.1m, 6.4m, Procedure.BufferSmp), 6.3m).Value.Rate.Amount.IsZero);

    [Theory]
    [InlineData(5.99, 6.5, "buffer-outside-method")]
    [InlineData(6.81, 6.5, "buffer-outside-method")]
    [InlineData(6.4, 5.9, "target-outside-method")]
    public void Outside_a_table_there_is_no_answer(double buffer, double target, string code) =>
        Assert.Equal(code, Lime(Soil(5.5m, (decimal)buffer, Procedure.BufferSmp), (decimal)target).Reason.Code);

    [Fact]
    public void A_table_that_allows_it_is_read_between_its_rows()
    {
        // Half way from 6.4 (1500) to 6.8 (500).
        var lime = Lime(Soil(5.5m, 6.6m, Procedure.BufferSmp), 6.5m, methods: [InventedLime.Table with { Interpolate = true }]).Value;

        Assert.Equal(1000, lime.Rate.PoundsPerAcre, 6);
    }

    [Theory]
    [InlineData(6.6, true)]
    [InlineData(6.7, false)]
    public void The_mehlich_equation_ends_at_its_reference_ph(double target, bool given) =>
        Assert.Equal(given, Lime(Soil(5.5m, 6.2m, Procedure.BufferMehlich), (decimal)target).IsGiven);

    [Fact]
    public void A_buffer_that_found_no_acidity_needs_no_lime_and_says_so()
    {
        var lime = Lime(Soil(5.5m, 6.7m, Procedure.BufferMehlich), 6.0m).Value;

        Assert.True(lime.Rate.Amount.IsZero);
        Assert.Contains(lime.Assumptions, a => a.Code == "buffer-at-start");
    }

    [Fact]
    public void A_buffer_without_its_name_is_refused_and_says_what_to_ask()
    {
        var refused = Lime(Soil(5.5m, 6.2m), 6.0m).Reason;

        Assert.Equal("buffer-name-missing", refused.Code);
        Assert.Contains("which buffer", refused.Suggestion, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_buffer_the_answer_asks_the_laboratory() => Assert.Equal("buffer-missing", Lime(Soil(5.5m), 6.0m).Reason.Code);

    [Fact]
    public void A_buffer_that_no_method_is_made_for_is_refused() => Assert.Equal("buffer-not-covered", Lime(Soil(5.5m, 6.2m, Procedure.BufferWoodruff), 6.0m).Reason.Code);

    [Fact]
    public void One_buffers_value_never_enters_anothers_method() =>
        Assert.Equal("buffer-mismatch", Lime(Soil(5.5m, 6.2m, Procedure.BufferSmp), 6.0m, asked: NorthCarolina).Reason.Code);

    [Fact]
    public void A_table_that_names_a_buffer_its_equation_does_not_take_is_refused()
    {
        var test = Soil(5.5m, 6.2m, Procedure.BufferSmp);

        Assert.Equal("buffer-mismatch", Lime(test, 6.0m, methods: [NorthCarolina with { Buffers = [Procedure.BufferSmp] }]).Reason.Code);
        Assert.Equal("buffer-mismatch", Lime(test, 6.0m, methods: [AdamsEvans with { Buffers = [Procedure.BufferSmp] }]).Reason.Code);
    }

    [Fact]
    public void A_method_whose_equation_is_not_in_the_catalogue_is_refused() =>
        Assert.Equal("unknown-lime-formula", Lime(Soil(5.5m, 6.2m, Procedure.BufferMehlich), 6.0m, methods: [NorthCarolina with { FormulaId = "lime-of-nowhere" }]).Reason.Code);

    [Fact]
    public void The_pennsylvania_rule_has_no_target_below_6_5() =>
        Assert.Equal("target-outside-method", Lime(Soil(5.6m, 6.0m, Procedure.BufferModifiedMehlich, InventedLime.Acidity(6)), 6.4m).Reason.Code);

    [Fact]
    public void A_buffer_without_its_number_is_refused()
    {
        var test = Soil(5.5m, 6.2m, Procedure.BufferMehlich);
        test = test with { Readings = [.. test.Readings.Select(r => r.Analyte == Analyte.BufferPh ? r with { Amount = Amount.Below(6.0m) } : r)] };

        Assert.Equal("buffer-open", Lime(test, 6.0m).Reason.Code);
    }

    [Fact]
    public void What_was_seen_goes_first_and_then_the_farms_own_region()
    {
        var near = NorthCarolina with { Id = "south", Regions = ["XX-NEAR"] };
        var recalled = NorthCarolina with { Id = "recalled", Regions = ["XX-NEAR"], Source = AdamsEvans.Source };
        LimeMethod[] methods = [recalled, NorthCarolina, near];
        var test = Soil(5.5m, 6.2m, Procedure.BufferMehlich);

        Assert.Equal("south", Lime(test, 6.0m, region: "XX-NEAR", methods: methods).Value.Method);
        Assert.Equal("north-carolina", Lime(test, 6.0m, methods: methods).Value.Method);
        Assert.Contains(Lime(test, 6.0m, methods: methods).Value.Assumptions, a => a.Code == "lime-method");
    }

    [Fact]
    public void A_ph_without_its_method_is_taken_in_water_and_that_is_said()
    {
        var test = Soil(null) with { Readings = [new Reading(Analyte.Ph, Amount.Measured(6.5m), ReportingUnit.PhUnits, Method.By(null), "x")] };

        Assert.Contains(Lime(test, 6.0m).Value.Assumptions, a => a.Code == "ph-in-water");
    }

    [Fact]
    public void Without_a_ph_nobody_can_say_whether() => Assert.Equal("ph-missing", Lime(Soil(null, 6.2m, Procedure.BufferMehlich), 6.0m).Reason.Code);

    [Fact]
    public void A_ph_given_as_less_than_a_number_is_refused()
    {
        var test = Soil(null) with { Readings = [new Reading(Analyte.Ph, Amount.Below(5.0m), ReportingUnit.PhUnits, Method.By(Procedure.PhWater11), "x")] };

        Assert.Equal("ph-open", Lime(test, 6.0m).Reason.Code);
    }

    [Theory]
    [InlineData(1500, "lb/acre", 1500)]
    [InlineData(1.5, "tons/acre", 3000)]
    [InlineData(50, "lb/1000-sq-ft", 2178)]
    [InlineData(1120.851156, "kg/ha", 1000)]
    [InlineData(1.120851156, "t/ha", 1000)]
    public void Without_a_buffer_name_the_laboratorys_own_rate_is_used(double value, string unit, double expected)
    {
        var lime = Lime(Soil(5.5m, 6.2m) with { LabRecommendations = [new LabRecommendation("Limestone", (decimal)value, unit, null)] }, 6.0m).Value;

        Assert.Equal(expected, lime.Rate.PoundsPerAcre, 3);
        Assert.Equal("laboratory", lime.Method);
        Assert.Equal(["lime-basis", "laboratory-target", "laboratory-lime-rate"], lime.Assumptions.Select(a => a.Code));
    }

    [Fact]
    public void A_laboratory_rate_in_calcium_carbonate_needs_no_word_on_its_basis() =>
        Assert.DoesNotContain(
            Lime(Soil(5.5m) with { LabRecommendations = [new LabRecommendation("lime", 1000, "lb/acre", CalciumCarbonateEquivalent)] }, 6.0m).Value.Assumptions,
            a => a.Code == "lime-basis");

    [Theory]
    [InlineData(1000, "bags", null, "lime-unit-unknown")]
    [InlineData(-1, "lb/acre", null, "lime-unit-unknown")]
    [InlineData(1000, "lb/acre", "marl", "lime-basis-unknown")]
    public void A_laboratory_rate_that_cannot_be_read_is_refused(double value, string unit, string? basis, string code) =>
        Assert.Equal(code, Lime(Soil(5.5m) with { LabRecommendations = [new LabRecommendation("lime", (decimal)value, unit, basis)] }, 6.0m).Reason.Code);

    [Fact]
    public void A_named_buffer_goes_before_the_laboratorys_rate() =>
        Assert.Equal("north-carolina", Lime(Soil(5.4m, 6.2m, Procedure.BufferMehlich) with { LabRecommendations = [new LabRecommendation("lime", 9, "ton/acre", null)] }, 6.0m).Value.Method);

    [Fact]
    public void A_requirement_follows_the_depth_in_proportion()
    {
        // 1600 lb for 6 in: to 4 in two thirds of it.
        var lime = Lime(Soil(5.4m, 6.2m, Procedure.BufferMehlich), 6.0m).Value;

        var shallow = LimeRequirementCalculation.ForDepth(lime, Length.FromInches(4));

        Assert.Equal(1600.0 * 4 / 6, shallow.Rate.PoundsPerAcre, 9);
        Assert.Equal(4, shallow.Depth.Inches, 9);
        Assert.Equal(lime, LimeRequirementCalculation.ForDepth(lime, Length.FromInches(6)));
    }

    [Fact]
    public void Deeper_never_needs_less_lime() =>
        Gen.Select(Gen.Double[1, 12], Gen.Double[1, 12]).Sample((a, b) =>
        {
            var lime = Lime(Soil(5.4m, 6.2m, Procedure.BufferMehlich), 6.0m).Value;
            Assert.True(LimeRequirementCalculation.ForDepth(lime, Length.FromInches(Math.Min(a, b))).Rate <= LimeRequirementCalculation.ForDepth(lime, Length.FromInches(Math.Max(a, b))).Rate);
        });

    [Fact]
    public void A_more_acid_soil_never_needs_less_lime() =>
        Soils.Sample(s =>
        {
            var acid = Lime(Soil(Math.Min(s.A, s.B), s.Buffer, s.Method.Buffers[0], InventedLime.Acidity(s.Acidity)), s.Target);
            var mild = Lime(Soil(Math.Max(s.A, s.B), s.Buffer, s.Method.Buffers[0], InventedLime.Acidity(s.Acidity)), s.Target);
            Assert.True(!acid.IsGiven || !mild.IsGiven || mild.Value.Rate <= acid.Value.Rate);
        });

    [Fact]
    public void A_lower_buffer_never_needs_less_lime() =>
        Soils.Sample(s =>
        {
            var (low, high) = (Math.Min(s.Buffer, s.Other), Math.Max(s.Buffer, s.Other));
            var acid = Lime(Soil(s.A, low, s.Method.Buffers[0], InventedLime.Acidity(s.Acidity)), s.Target);
            var mild = Lime(Soil(s.A, high, s.Method.Buffers[0], InventedLime.Acidity(s.Acidity)), s.Target);
            Assert.True(!acid.IsGiven || !mild.IsGiven || mild.Value.Rate <= acid.Value.Rate);
        });

    [Fact]
    public void Working_changes_no_bit_of_the_requirement() =>
        Soils.Sample(s =>
        {
            var test = Soil(s.A, s.Buffer, s.Method.Buffers[0], InventedLime.Acidity(s.Acidity));

            var silent = Lime(test, s.Target);
            var shown = Lime(test, s.Target, working: new WorkingSheet());

            Assert.Equal(silent.IsGiven, shown.IsGiven);
            if (silent.IsGiven)
            {
                Assert.Equal((silent.Value.Rate, silent.Value.PrintedValue), (shown.Value.Rate, shown.Value.PrintedValue));
            }
            else
            {
                Assert.Equal(silent.Reason, shown.Reason);
            }
        });

    [Theory]
    [InlineData(Procedure.BufferMehlich, 6.2)]
    [InlineData(Procedure.BufferAdamsEvans, 7.7)]
    [InlineData(Procedure.BufferModifiedMehlich, 6.2)]
    public void Every_line_of_the_board_is_reproduced_from_its_own_numbers(Procedure buffer, double value)
    {
        var sheet = new WorkingSheet();

        var lime = Lime(Soil(5.4m, (decimal)value, buffer, InventedLime.Acidity(6)), 6.5m, working: sheet).Value;

        Assert.All(sheet.Lines, l => Assert.Equal(
            l.Result!.Value,
            Formulas.All.Single(f => f.Id == l.Formula).Calculate(l.Inputs.ToDictionary(i => i.Symbol, i => i.Value!.Value)).Value,
            9));
        Assert.All(sheet.Lines.SelectMany(l => l.Inputs), i => Assert.NotEqual(Origin.Unstated, i.From));
        Assert.Equal((double)lime.PrintedValue, sheet.Lines[^1].Result!.Value, 9);
    }

    private static Gen<(decimal A, decimal B, decimal Buffer, decimal Other, decimal Acidity, decimal Target, LimeMethod Method)> Soils { get; } =
        Gen.Select(Tenths(40, 70), Tenths(40, 70), Tenths(58, 80), Tenths(58, 80), Tenths(0, 120), OneOf(5.6m, 6.0m, 6.3m, 6.5m, 7.0m), OneOf(InventedLime.All));

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Gen<decimal> Tenths(int from, int to) => Gen.Int[from, to].Select(i => i / 10m);
}
