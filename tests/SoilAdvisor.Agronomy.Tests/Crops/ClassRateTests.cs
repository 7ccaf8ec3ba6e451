using CsCheck;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static SoilAdvisor.Agronomy.Tests.Crops.InventedField;

namespace SoilAdvisor.Agronomy.Tests.Crops;

public sealed class ClassRateTests
{
    [Theory]
    [InlineData(24.9, 200)]
    [InlineData(25, 100)]
    [InlineData(49.9, 100)]
    [InlineData(50, 50)]
    [InlineData(99.9, 50)]
    [InlineData(100, 0)]
    public void The_rate_is_the_row_of_the_class_that_the_pair_names(double phosphorus, double expected)
    {
        var need = NeedOf(Test(p: (decimal)phosphorus), [ClassTable], [Plant(Cabbage)]).Only(PlantNutrient.P2O5);

        Assert.Equal(expected, need.Rate.Low.PoundsPerAcre, 9);
        Assert.True(need.Rate.IsOneNumber);
        Assert.Equal(("invented-classes", "invented"), (need.RateTable, need.Guide));
    }

    [Fact]
    public void A_rate_of_zero_is_a_need_of_zero_and_not_a_refusal()
    {
        var answer = NeedOf(Test(p: 150, k: 50), [ClassTable], [Plant(Cabbage)]);

        Assert.True(answer.Only(PlantNutrient.P2O5).Rate.High.IsZero);
        Assert.Equal(Standing.Stop, answer.Only(PlantNutrient.P2O5).Standing);
        Assert.Empty(answer.Refused);
    }

    [Fact]
    public void A_printed_range_stays_a_range_with_its_splits_in_order_and_its_other_rows_said()
    {
        var nitrogen = NeedOf(Test(), [ClassTable], [Plant(Cabbage)]).Only(PlantNutrient.N);

        Assert.Equal((100.0, 150.0), (Math.Round(nitrogen.Rate.Low.PoundsPerAcre, 9), Math.Round(nitrogen.Rate.High.PoundsPerAcre, 9)));
        Assert.Equal(["before planting", "four weeks later"], nitrogen.Splits.Select(s => s.When));
        Assert.Equal("60 lb/acre N (late crop)", Assert.Single(nitrogen.Alternatives));
        Assert.Null(nitrogen.Class);
    }

    [Fact]
    public void Several_crops_on_one_test_get_the_largest_single_rate_and_not_the_sum()
    {
        var answer = NeedOf(Test(p: 30, k: 50), [ClassTable], [Plant(Cabbage), Plant(Carrot)]);

        Assert.Equal((110.0, "carrot", 0), (Math.Round(answer.Only(PlantNutrient.P2O5).Rate.Low.PoundsPerAcre, 9), answer.Only(PlantNutrient.P2O5).Crop, answer.Only(PlantNutrient.P2O5).PlantingIndex));
        Assert.Equal(180, answer.Only(PlantNutrient.K2O).Rate.Low.PoundsPerAcre, 9);
        Assert.Contains(answer.Assumptions, a => a.Code == "largest-single-crop-rate");
    }

    [Fact]
    public void Nitrogen_is_planned_crop_by_crop()
    {
        var nitrogen = NeedOf(Test(), [ClassTable], [Plant(Cabbage), Plant(Carrot)]).Needs.Where(n => n.Nutrient == PlantNutrient.N).ToList();

        Assert.Equal([(0, "cabbage"), (1, "carrot")], nitrogen.Select(n => (n.PlantingIndex, n.Crop)));
    }

    [Fact]
    public void Without_a_pair_phosphate_and_potash_are_refused_with_the_pairs_that_hold_the_crop_and_nitrogen_stands()
    {
        var unpaired = ClassTable with { Pairs = [] };
        var other = ClassTable with { Id = "of-other-guide", Pairs = [ClassTable.Pairs[0] with { Guide = "other-guide" }] };

        var answer = NeedOf(Test(p: 30, k: 50), [unpaired, other], [Plant(Cabbage)]);

        Assert.Equal(["no-rate-pair", "no-rate-pair"], answer.Refused.Select(r => r.Refusal.Code));
        Assert.Contains("of-other-guide with the guide other-guide", answer.Refused[0].Refusal.Suggestion, StringComparison.Ordinal);
        Assert.Equal(100, answer.Only(PlantNutrient.N).Rate.Low.PoundsPerAcre, 9);
    }

    [Fact]
    public void A_crop_that_the_table_does_not_hold_is_refused_for_that_nutrient_only()
    {
        var answer = NeedOf(Test(p: 30, k: 50), [ClassTable, Elsewhere], [Plant(Lettuce), Plant(Cabbage)]);

        Assert.Equal(["/crops/0", "/crops/0"], answer.Refused.Select(r => r.Pointer));
        Assert.All(answer.Refused, r => Assert.Equal("crop-not-in-rate-table", r.Refusal.Code));
        Assert.Equal(100, answer.Only(PlantNutrient.P2O5).Rate.Low.PoundsPerAcre, 9);
    }

    [Fact]
    public void A_nutrient_that_was_not_tested_is_refused_and_says_what_to_test()
    {
        var refused = Assert.Single(NeedOf(Test(k: 50), [ClassTable], [Plant(Cabbage)]).Refused).Refusal;

        Assert.Equal("nutrient-not-rated", refused.Code);
        Assert.Contains("Have P tested", refused.Suggestion, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rating_by_another_guide_is_not_used()
    {
        var test = Test(p: 30);
        var ratings = test.Readings.Select(r => InventedField.Guide.Rate(test, r, default).Value with { Guide = "other-guide" }).ToList();

        var answer = NeedCalculation.For(test, InventedField.Guide, new Dictionary<string, RateTable> { [ClassTable.Id] = ClassTable }, ratings, [Plant(Cabbage)], [], InventedField.CoverCrops, null);

        Assert.DoesNotContain(answer.Needs, n => n.Nutrient == PlantNutrient.P2O5);
    }

    [Fact]
    public void A_class_without_a_counterpart_is_refused_and_not_guessed()
    {
        var pair = ClassTable.Pairs[0] with { Classes = new Dictionary<string, string> { ["Low"] = "low" } };

        var answer = NeedOf(Test(p: 30), [ClassTable with { Pairs = [pair] }], [Plant(Cabbage)]);

        Assert.Contains(answer.Refused, r => r.Refusal.Code == "class-not-in-rate-pair");
    }

    [Fact]
    public void A_class_without_a_row_is_refused_and_the_rate_of_another_class_is_not_used() =>
        Assert.Contains(NeedOf(Test(p: 70), [ClassTable], [Plant(Carrot)]).Refused, r => r.Refusal.Code == "class-not-in-rate-table");

    [Theory]
    [InlineData(99.9, true)]
    [InlineData(100, false)]
    public void Magnesium_for_low_soils_is_counted_on_low_soils_only(double magnesium, bool counted)
    {
        var answer = NeedOf(Test(mg: (decimal)magnesium), [ClassTable], [Plant(Cabbage)]);

        Assert.Equal(counted, answer.Needs.Any(n => n.Nutrient == PlantNutrient.Mg));
        Assert.Equal(!counted, answer.Assumptions.Any(a => a.Code == "conditional-rate-not-counted"));
    }

    [Fact]
    public void Magnesium_for_low_soils_is_not_counted_without_a_test() =>
        Assert.DoesNotContain(NeedOf(Test(), [ClassTable], [Plant(Cabbage)]).Needs, n => n.Nutrient == PlantNutrient.Mg);

    [Fact]
    public void Sulfur_that_no_class_changes_needs_no_test() =>
        Assert.Equal(45, NeedOf(Test(), [ClassTable], [Plant(Cabbage)]).Only(PlantNutrient.S).Rate.High.PoundsPerAcre, 9);

    [Fact]
    public void Boron_is_a_need_with_its_condition_for_the_guard_to_decide() =>
        Assert.Equal("soil boron low", NeedOf(Test(), [ClassTable], [Plant(Cabbage)]).Only(PlantNutrient.B).Condition);

    [Fact]
    public void A_micronutrient_rate_is_never_borrowed_from_another_region()
    {
        var far = Elsewhere with { Rates = [Rate("lettuce", PlantNutrient.N, "all", 70), Rate("lettuce", PlantNutrient.B, "all", 1)] };

        Assert.DoesNotContain(NeedOf(Test(), [far], [Plant(Lettuce)]).Needs, n => n.Nutrient == PlantNutrient.B);
    }

    [Fact]
    public void A_rate_borrowed_from_another_region_is_said()
    {
        var answer = NeedOf(Test(), [ClassTable, Elsewhere], [Plant(Lettuce)]);

        Assert.Equal("elsewhere", answer.Only(PlantNutrient.N).RateTable);
        Assert.Contains("Table of elsewhere", Assert.Single(answer.Assumptions, a => a.Code == "rate-of-another-guide").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_of_the_guides_own_region_goes_before_one_from_elsewhere_and_needs_no_warning()
    {
        var near = Elsewhere with { Id = "near", Regions = ["XX-YY"], Rates = [Rate("lettuce", PlantNutrient.N, "all", 90)] };

        var answer = NeedOf(Test(), [Elsewhere, near], [Plant(Lettuce)]);

        Assert.Equal("near", answer.Only(PlantNutrient.N).RateTable);
        Assert.DoesNotContain(answer.Assumptions, a => a.Code == "rate-of-another-guide");
    }

    [Theory]
    [InlineData(null, false)]
    [InlineData(SoilGroup.Sand, true)]
    [InlineData(SoilGroup.Clay, false)]
    public void A_rate_for_one_texture_needs_that_texture(SoilGroup? soil, bool given)
    {
        var sandy = Elsewhere with { Rates = [Rate("lettuce", PlantNutrient.N, "all", 70, soils: [SoilGroup.Sand])] };

        var answer = NeedOf(Test(soil: soil), [sandy], [Plant(Lettuce)]);

        Assert.Equal(given, answer.Needs.Count > 0);
        Assert.Equal(!given, answer.Refused.Any(r => r.Refusal.Code == "texture-needed"));
    }

    [Fact]
    public void A_crop_without_any_nitrogen_rate_is_refused_for_nitrogen()
    {
        var refused = NeedOf(Test(), [ClassTable], [Plant(Lettuce)]).Refused.Select(r => r.Refusal);

        Assert.Contains(refused, r => r.Code == "crop-not-in-rate-table" && r.Message.Contains("nitrogen", StringComparison.Ordinal));
    }

    [Fact]
    public void Need_never_rises_with_the_soil_test() =>
        Gen.Select(Gen.Decimal[0, 200], Gen.Decimal[0, 200], Gen.Bool).Sample((a, b, useBuildUp) =>
        {
            RateTable[] tables = [useBuildUp ? BuildUp : ClassTable];
            Planting[] plantings = [Plant(Cabbage, 20)];
            var (low, high) = (Math.Min(a, b), Math.Max(a, b));
            var poorer = NeedOf(Test(p: low, k: low, cec: 8), tables, plantings);
            var richer = NeedOf(Test(p: high, k: high, cec: 8), tables, plantings);
            foreach (var nutrient in new[] { PlantNutrient.P2O5, PlantNutrient.K2O })
            {
                Assert.True(richer.Only(nutrient).Rate.Low <= poorer.Only(nutrient).Rate.Low);
                Assert.True(richer.Only(nutrient).Rate.High <= poorer.Only(nutrient).Rate.High);
            }
        });

    [Fact]
    public void Working_changes_no_bit() =>
        Gen.Select(Gen.Decimal[0, 200], Gen.Decimal[0, 200], Gen.Decimal[0, 30], Gen.Bool).Sample((p, k, cec, useBuildUp) =>
        {
            RateTable[] tables = [useBuildUp ? BuildUp : ClassTable, Elsewhere];
            Planting[] plantings = [Plant(Cabbage), Plant(Carrot, 30, "t/ha")];

            var silent = NeedOf(Test(p, k, 60, cec), tables, plantings);
            var shown = NeedOf(Test(p, k, 60, cec), tables, plantings, working: new WorkingSheet());

            Assert.Equal(silent.Needs.Select(n => (n.Nutrient, n.Rate, n.Removal)), shown.Needs.Select(n => (n.Nutrient, n.Rate, n.Removal)));
            Assert.Equal(silent.Refused, shown.Refused);
            Assert.Equal(silent.Assumptions, shown.Assumptions);
        });

    [Fact]
    public void The_board_shows_the_class_and_the_row()
    {
        var sheet = new WorkingSheet();

        NeedOf(Test(p: 30), [ClassTable], [Plant(Cabbage)], working: sheet);

        var line = Assert.Single(sheet.Lines, l => l.Formula == "rate" && l.Title.StartsWith("phosphate", StringComparison.Ordinal));
        Assert.Equal("Invented class table: cabbage, Medium in the guide is medium in the table", line.Shown);
        Assert.Equal("100 lb/acre P2O5", line.ResultText);
    }
}
