using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static SoilAdvisor.Agronomy.Tests.Crops.InventedField;

namespace SoilAdvisor.Agronomy.Tests.Crops;

public sealed class BuildUpRateTests
{
    // By hand: 20 ton × 1.5 lb/ton = 30 lb removed; below 40 mg/kg another 5 lb for each mg/kg missing; nothing above 70.
    [Theory]
    [InlineData(30, 80)]
    [InlineData(39.9, 30.5)]
    [InlineData(40, 30)]
    [InlineData(50, 30)]
    [InlineData(70, 30)]
    [InlineData(70.1, 0)]
    [InlineData(75, 0)]
    public void Phosphate_is_removal_with_build_up_below_the_critical_level_and_nothing_above_the_range(double phosphorus, double expected) =>
        Assert.Equal(expected, NeedOf(Test(p: (decimal)phosphorus), [BuildUp], [Plant(Cabbage, 20)]).Only(PlantNutrient.P2O5).Rate.Low.PoundsPerAcre, 9);

    // By hand at CEC 8: critical 75 + 2.5 × 8 = 95, range to 115; 20 ton × 6.5 lb/ton = 130 lb removed;
    // at 80 mg/kg (1 + 0.05 × 8) × 15 + 20 = 41 lb on top.
    [Theory]
    [InlineData(80, 171)]
    [InlineData(94.5, 150.7)]
    [InlineData(95, 130)]
    [InlineData(115, 130)]
    [InlineData(115.1, 0)]
    [InlineData(130, 0)]
    public void Potash_limits_rise_with_the_exchange_capacity(double potassium, double expected) =>
        Assert.Equal(expected, NeedOf(Test(k: (decimal)potassium, cec: 8), [BuildUp], [Plant(Cabbage, 20)]).Only(PlantNutrient.K2O).Rate.Low.PoundsPerAcre, 9);

    [Fact]
    public void Potash_without_an_exchange_capacity_asks_for_it() =>
        Assert.Contains(NeedOf(Test(p: 30, k: 80), [BuildUp], [Plant(Cabbage, 20)]).Refused, r => r.Refusal.Code == "cec-needed");

    [Fact]
    public void The_season_s_removals_are_added()
    {
        // 20 ton × 1.5 lb/ton and 10 ton × 1 kg/t (2 lb/ton).
        var need = NeedOf(Test(p: 50), [BuildUp], [Plant(Cabbage, 20), Plant(Carrot, 10)]).Only(PlantNutrient.P2O5);

        Assert.Equal(50, need.Rate.Low.PoundsPerAcre, 9);
        Assert.Equal(50, need.Removal!.Value.PoundsPerAcre, 9);
    }

    [Fact]
    public void A_typical_yield_is_said()
    {
        // 400 cwt is 20 short tons.
        var answer = NeedOf(Test(p: 50), [BuildUp], [Plant(Cabbage)]);

        Assert.Equal(30, answer.Only(PlantNutrient.P2O5).Rate.Low.PoundsPerAcre, 9);
        Assert.Contains("400 cwt/acre", Assert.Single(answer.Assumptions, a => a.Code == "typical-yield").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_any_yield_the_answer_asks_for_it_and_assumes_nothing()
    {
        var answer = NeedOf(Test(p: 30), [BuildUp], [Plant(Cabbage), Plant(Carrot)]);

        Assert.Contains(answer.Refused, r => r.Refusal.Code == "yield-needed" && r.Refusal.Message.StartsWith("carrot", StringComparison.Ordinal));
        Assert.DoesNotContain(answer.Assumptions, a => a.Code == "typical-yield");
    }

    [Fact]
    public void Above_the_range_nothing_is_needed_even_without_a_yield() =>
        Assert.True(NeedOf(Test(p: 75), [BuildUp], [Plant(Carrot)]).Only(PlantNutrient.P2O5).Rate.High.IsZero);

    [Fact]
    public void A_crop_without_a_removal_figure_is_refused() =>
        Assert.Contains(NeedOf(Test(p: 30), [BuildUp], [Plant(Lettuce, 10)]).Refused, r => r.Refusal.Code == "removal-not-held");

    [Fact]
    public void Bushels_are_read_with_a_removal_by_bushel_only()
    {
        var grain = Lettuce with { Removals = [new Removal("harvested", "grain", "lb/bu", null, 0.35m, 0.25m, null, null, null, Citation.OurJudgement, null)] };

        Assert.Equal(35, NeedOf(Test(p: 50), [BuildUp], [Plant(grain, 100, "bu/acre")]).Only(PlantNutrient.P2O5).Rate.Low.PoundsPerAcre, 9);
        Assert.Contains(NeedOf(Test(p: 50), [BuildUp], [Plant(grain, 3)]).Refused, r => r.Refusal.Code == "yield-needed");
        Assert.Contains(NeedOf(Test(p: 50), [BuildUp], [Plant(Cabbage, 100, "bu/acre")]).Refused, r => r.Refusal.Code == "yield-needed");
    }

    // One tonne per hectare is 0.4460898 short tons an acre: 1000 / 0.45359237 × 0.40468564224 / 2000.
    [Theory]
    [InlineData(20, "short-ton/acre", 30)]
    [InlineData(400, "cwt/acre", 30)]
    [InlineData(40000, "lb/acre", 30)]
    [InlineData(44.834, "t/ha", 30.0000)]
    public void A_yield_by_weight_may_come_in_any_unit(double yield, string unit, double expected) =>
        Assert.Equal(expected, NeedOf(Test(p: 50), [BuildUp], [Plant(Cabbage, (decimal)yield, unit)]).Only(PlantNutrient.P2O5).Rate.Low.PoundsPerAcre, 3);

    [Fact]
    public void A_result_below_detection_builds_up_from_the_limit_and_says_so()
    {
        var test = Test() with { Readings = [new Reading(Analyte.P, Amount.Below(5m), ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Mehlich3), "x")] };

        var answer = NeedOf(test, [BuildUp], [Plant(Cabbage, 20)]);

        Assert.Equal(30 + (5 * 35), answer.Only(PlantNutrient.P2O5).Rate.Low.PoundsPerAcre, 9);
        Assert.Contains(answer.Assumptions, a => a.Code == "open-result");
    }

    [Fact]
    public void Without_a_test_the_rule_says_what_to_test()
    {
        var refused = NeedOf(Test(), [BuildUp], [Plant(Cabbage, 20)]).Refused.Select(r => r.Refusal.Code);

        Assert.Equal(2, refused.Count(c => c == "nutrient-not-rated"));
    }

    [Theory]
    [InlineData("lb/ton", 1.5, 30)]
    [InlineData("lb/cwt", 0.075, 30)]
    [InlineData("kg/t", 0.75, 30)]
    public void A_removal_may_be_printed_in_any_unit_by_weight(string unit, double content, double expected)
    {
        var crop = Lettuce with { Removals = [new Removal("harvested", "fresh", unit, null, (decimal)content, null, null, null, null, Citation.OurJudgement, null)] };

        Assert.Equal(expected, NeedOf(Test(p: 50), [BuildUp], [Plant(crop, 20)]).Only(PlantNutrient.P2O5).Rate.Low.PoundsPerAcre, 9);
    }

    [Fact]
    public void What_stays_in_the_field_is_not_removed()
    {
        var crop = Lettuce with { Removals = [new Removal("other", "tops", "lb/ton", null, 9m, null, null, null, null, Citation.OurJudgement, null)] };

        Assert.Contains(NeedOf(Test(p: 50), [BuildUp], [Plant(crop, 20)]).Refused, r => r.Refusal.Code == "removal-not-held");
    }

    [Fact]
    public void A_yield_by_row_is_refused_with_the_units_that_work() =>
        Assert.Contains("short-ton/acre", Assert.Single(NeedOf(Test(p: 50), [BuildUp], [Plant(Cabbage, 80, "lb/100-row-ft")]).Refused, r => r.Refusal.Code == "yield-needed").Refusal.Suggestion, StringComparison.Ordinal);

    [Fact]
    public void Pounds_an_acre_become_milligrams_by_the_said_factor()
    {
        var test = Test() with { Readings = [new Reading(Analyte.P, Amount.Measured(60m), ReportingUnit.PoundsPerAcre, Method.Extracted(Extractant.Mehlich3), "x")] };

        var answer = NeedOf(test, [BuildUp], [Plant(Cabbage, 20)]);

        // 60 lb/acre is 30 mg/kg.
        Assert.Equal(80, answer.Only(PlantNutrient.P2O5).Rate.Low.PoundsPerAcre, 9);
        Assert.Contains(answer.Assumptions, a => a.Code == "pounds-per-acre-factor");
    }

    [Fact]
    public void Every_line_of_the_board_is_reproduced_from_its_own_numbers()
    {
        var sheet = new WorkingSheet();

        NeedOf(Test(p: 30, k: 80, cec: 8), [BuildUp], [Plant(Cabbage, 20)], working: sheet);

        var formulas = sheet.Lines.Where(l => l.Result is not null).ToList();
        Assert.Equal(["crop-removal", "build-up-phosphate", "removal-and-build-up", "critical-potassium", "crop-removal", "build-up-potash", "removal-and-build-up"], formulas.Select(l => l.Formula));
        Assert.All(formulas, l => Assert.Equal(
            l.Result!.Value,
            Formulas.All.Single(f => f.Id == l.Formula).Calculate(l.Inputs.ToDictionary(i => i.Symbol, i => i.Value!.Value)).Value,
            9));
        Assert.All(formulas.SelectMany(l => l.Inputs), i => Assert.NotEqual(Origin.Unstated, i.From));
        Assert.Equal(171, formulas[^1].Result!.Value, 9);
    }
}
