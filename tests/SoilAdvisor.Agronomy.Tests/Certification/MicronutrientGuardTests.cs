using CsCheck;
using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Tests.Materials;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;
using static SoilAdvisor.Agronomy.Tests.Certification.InventedBed;
using static SoilAdvisor.Agronomy.Tests.Materials.InventedMaterial;

namespace SoilAdvisor.Agronomy.Tests.Certification;

public class MicronutrientGuardTests
{
    private static readonly Crop Beet = Vegetable("beet", "root", SoilContact.Contact, boron: "high");
    private static readonly Crop Bean = Vegetable("bean", "pods", SoilContact.Contact, boron: "none", sensitive: true);
    private static readonly Material Borax = Of("borax", "micronutrient", Figure("boron", 11), Figure("largest-single-rate", 18, "lb/acre"), Figure("wait-before-sowing", 7, "days"));

    [Fact]
    public void A_documented_boron_deficiency_gets_the_lowest_rate_in_grams_to_dissolve_and_spray()
    {
        var sheet = new WorkingSheet();

        var finding = Assert.Single(Guard(Bed(Planting(Beet)), Standing.Below, 1, 3, sheet));

        // Michigan State prints 1 lb B an acre as 9 lb of borax (11 % B); on 100 sq ft: 453.592 g / 0.11 × 100 / 43,560 = 9.47 g.
        Assert.Equal((FindingState.Act, false), (finding.State, finding.Blocks));
        Assert.Contains("Weigh 9.47 g of borax (11 % boron), dissolve it and spray", finding.Message, StringComparison.Ordinal);
        Assert.Contains("never measure it by the spoon", finding.Message, StringComparison.Ordinal);
        Assert.Contains("soil or tissue test that shows low boron", finding.Record!, StringComparison.Ordinal);
        Assert.Equal("micronutrient-deficiency", finding.Rule);
        Assert.Equal(9, Math.Round(sheet.Lines[0].Result!.Value));
    }

    [Theory]
    [InlineData(Standing.Target, FindingState.Pass)]
    [InlineData(Standing.Above, FindingState.Pass)]
    [InlineData(Standing.Stop, FindingState.Pass)]
    [InlineData(Standing.Information, FindingState.NotDecidable)]
    public void Anything_but_a_rating_below_sufficiency_gets_no_boron(Standing standing, FindingState state)
    {
        var finding = Assert.Single(Guard(Bed(Planting(Beet)), standing, 1, 3));

        Assert.Equal(state, finding.State);
        Assert.StartsWith("Spread no boron.", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unrated_boron_is_not_decidable_and_names_the_test()
    {
        var finding = Assert.Single(Guard(Bed(Planting(Beet)), null, 1, 3));

        Assert.Equal(FindingState.NotDecidable, finding.State);
        Assert.Contains("Have it tested", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_sensitive_crop_now_or_next_stops_boron(bool next)
    {
        var bed = next ? Bed(Planting(Beet), Planting(Bean)) : Bed(Planting(Bean), Planting(Beet));

        var finding = Assert.Single(Guard(bed, Standing.Below, 1, 3));

        Assert.Equal(FindingState.Act, finding.State);
        Assert.Contains("boron injures bean", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(" g of", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("high", true)]
    [InlineData("medium", true)]
    [InlineData("low", false)]
    [InlineData("none", false)]
    [InlineData(null, false)]
    public void Only_a_crop_that_responds_gets_boron(string? response, bool gets)
    {
        var crop = Vegetable("beet", "root", SoilContact.Contact, boron: response);

        Assert.Equal(gets, Assert.Single(Guard(Bed(Planting(crop)), Standing.Below, 1, 3)).Message.Contains(" g of borax", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1.98, false)]
    [InlineData(1.99, true)]
    public void More_than_the_largest_single_rate_is_never_advised(double boron, bool capped)
    {
        // 18 lb of borax hold 1.98 lb of boron.
        var message = Assert.Single(Guard(Bed(Planting(Beet)), Standing.Below, boron, 4)).Message;

        Assert.Equal(capped, message.Contains("largest single rate", StringComparison.Ordinal));
        Assert.Contains("Weigh 18.7 g of borax", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_crops_that_need_boron_get_it_once_at_the_lower_rate()
    {
        var kale = Vegetable("kale", "leaves", SoilContact.Contact, boron: "medium");
        var need = NoNeed with { Needs = [Need(PlantNutrient.B, "beet", 1.5, 3), Need(PlantNutrient.B, "kale", 1, 2)] };

        var finding = Assert.Single(MicronutrientGuard.For(Bed(Planting(Beet), Planting(kale)), [], [InventedRating.Of(Analyte.B, Standing.Below)], need, Rules, Today, [Borax]));

        Assert.Contains("1 lb of boron an acre, the lowest rate printed for kale", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_printed_rate_of_none_says_nothing()
    {
        var need = NoNeed with { Needs = [Need(PlantNutrient.B, "bean", 0, 0)] };

        Assert.Empty(MicronutrientGuard.For(Bed(Planting(Bean)), [], [], need, Rules, Today, [Borax]));
    }

    [Fact]
    public void Other_micronutrients_take_the_printed_rate_as_the_sign_of_response()
    {
        var sulfate = Of("zinc-sulfate", "micronutrient", Figure("zinc", 35.5m), Figure("largest-single-rate", 28, "lb/acre"));
        var need = NoNeed with { Needs = [Need(PlantNutrient.Zn, "carrot", 5, 10)] };

        var finding = Assert.Single(MicronutrientGuard.For(Bed(Planting(Carrot)), [], [InventedRating.Of(Analyte.Zn, Standing.Below)], need, Rules, Today, [Borax, sulfate]));

        // 5 lb / 0.355 = 14.08 lb an acre, on 100 sq ft 0.03233 lb = 14.7 g.
        Assert.Contains("Weigh 14.7 g of zinc-sulfate", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_material_that_carries_it_the_element_is_given_in_grams_and_the_certifier_asked()
    {
        var message = Assert.Single(MicronutrientGuard.For(Bed(Planting(Beet)), [], [InventedRating.Of(Analyte.B, Standing.Below)], NoNeed with { Needs = [Need(PlantNutrient.B, "beet", 1, 3)] }, Rules, Today, [])).Message;

        Assert.Contains("1.04 g of boron on this bed", message, StringComparison.Ordinal);
        Assert.Contains("ask the certifier", message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Standing.Below, FindingState.Pass, false)]
    [InlineData(Standing.Target, FindingState.Act, true)]
    [InlineData(Standing.Information, FindingState.Act, true)]
    public void A_micronutrient_material_that_is_planned_needs_the_documented_deficiency(Standing standing, FindingState state, bool blocks)
    {
        var finding = Assert.Single(MicronutrientGuard.For(Bed(Planting(Beet)), [Planned(Borax)], [InventedRating.Of(Analyte.B, standing)], NoNeed, Rules, Today, [Borax]));

        Assert.Equal((state, blocks), (finding.State, finding.Blocks));
    }

    [Fact]
    public void A_micronutrient_material_that_was_spread_without_a_test_is_found()
    {
        var bed = Bed(Planting(Beet)) with { Applied = [Spread(Borax, Today, Today)] };

        Assert.Equal(FindingState.Act, Assert.Single(MicronutrientGuard.For(bed, [], [], NoNeed, Rules, Today, [])).State);
    }

    [Fact]
    public void Scaling_a_bed_scales_the_grams()
    {
        Gen.Double[1, 100_000].Sample(squareFeet =>
        {
            var sheet = new WorkingSheet();
            Guard(Bed(Planting(Beet)) with { Area = Area.FromSquareFeet(squareFeet) }, Standing.Below, 1, 3, sheet);
            var perSquareFoot = sheet.Lines[^1].Result!.Value / squareFeet;
            return Math.Abs(perSquareFoot - (1 / 0.11 / 43_560)) < 1e-12;
        });
    }

    private static IReadOnlyList<Finding> Guard(Agronomy.Plans.Bed bed, Standing? boron, double low, double high, WorkingSheet? working = null) => MicronutrientGuard.For(
        bed,
        [],
        boron is { } standing ? [InventedRating.Of(Analyte.B, standing)] : [],
        NoNeed with { Needs = [Need(PlantNutrient.B, "beet", low, high)] },
        Rules,
        Today,
        [Borax],
        working);
}
