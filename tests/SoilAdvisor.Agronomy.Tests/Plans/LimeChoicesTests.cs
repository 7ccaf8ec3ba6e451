using CsCheck;
using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Tests.Acidity;
using SoilAdvisor.Agronomy.Tests.Materials;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;
using static SoilAdvisor.Agronomy.Tests.Materials.InventedMaterial;

namespace SoilAdvisor.Agronomy.Tests.Plans;

public class LimeChoicesTests
{
    private static readonly Material Calcitic = Stone("calcitic", 90, magnesium: 0.5m);
    private static readonly Material Dolomitic = Stone("dolomitic", 100, magnesium: 11);
    private static readonly Material Ash = Stone("ash", 43, magnesium: 1.5m) with
    {
        Values = [.. Stone("ash", 43, 1.5m).Values, Figure("k2o", 6), Figure("k2o-available-share", 90)],
    };

    [Fact]
    public void A_stone_of_90_percent_needs_a_ninth_more_than_pure_calcium_carbonate()
    {
        var choice = Assert.Single(Choices(Requirement(1800), [Offered(Calcitic)], null, Area.FromSquareFeet(435.6)));

        Assert.Equal(2000, choice.Rate.PoundsPerAcre, 9);
        Assert.Equal(20, choice.PerBed!.Value.Pounds, 9);
        Assert.Equal(1800, choice.Supplied[Nutrient.CalciumCarbonate].PoundsPerAcre, 6);
    }

    [Fact]
    public void Calcium_and_magnesium_of_the_stone_come_with_it()
    {
        var choice = Assert.Single(Choices(Requirement(2000), [Offered(Dolomitic)], null, null));

        Assert.Equal(220, choice.Supplied[Nutrient.Mg].PoundsPerAcre, 6);
        Assert.Null(choice.PerBed);
        Assert.Null(choice.Cost);
    }

    [Fact]
    public void Nothing_is_chosen_where_nothing_is_needed() =>
        Assert.Empty(Choices(Requirement(0), [Offered(Calcitic)], null, null));

    [Theory]
    [InlineData(10, 1)]
    [InlineData(11, 2)]
    [InlineData(20, 2)]
    [InlineData(21, 3)]
    [InlineData(30, 3)]
    public void Doses_agree_with_the_Penn_State_garden_page(double poundsPer100SquareFeet, int doses)
    {
        // Penn State garden liming page (psu-garden): 11 to 20 lb per 100 sq ft in two applications, 21 and more in three, six months apart.
        var requirement = Requirement(poundsPer100SquareFeet * 435.6);

        var choice = Assert.Single(Choices(requirement, [Offered(Stone("pure", 100, 0))], null, null));

        Assert.Equal(doses, choice.Doses.Each.Count);
        Assert.Equal(choice.Rate.PoundsPerAcre, choice.Doses.Each.Sum(d => d.Rate.PoundsPerAcre), 6);
        Assert.Equal(doses > 1, choice.Reasons.Any(r => r.Contains("six months apart", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(Standing.Below, "dolomitic")]
    [InlineData(Standing.Target, "calcitic")]
    [InlineData(Standing.Above, "calcitic")]
    [InlineData(Standing.Stop, "calcitic")]
    public void Magnesium_decides_between_dolomitic_and_calcitic_before_any_price(Standing magnesium, string first)
    {
        var choices = Choices(
            Requirement(1800),
            [Offered(Calcitic, pricePerKilogram: magnesium == Standing.Below ? 0.1m : 9m), Offered(Dolomitic, pricePerKilogram: magnesium == Standing.Below ? 9m : 0.1m)],
            InventedRating.Of(Analyte.Mg, magnesium),
            null);

        Assert.Equal(first, choices[0].Offered.Material.Id);
        Assert.Equal(2, choices.Count);
    }

    [Fact]
    public void Without_a_magnesium_rating_the_cheaper_neutralising_value_goes_first()
    {
        // 0.09 for 90 % is 0.100 a kilogram of CaCO3; 0.099 for 100 % is 0.099.
        var choices = Choices(Requirement(1800), [Offered(Calcitic, 0.09m), Offered(Dolomitic, 0.099m)], null, null);

        Assert.Equal("dolomitic", choices[0].Offered.Material.Id);
        Assert.All(choices, c => Assert.Contains(c.Reasons, r => r.Contains("Magnesium is not rated", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_priced_stone_goes_before_an_unpriced_one() =>
        Assert.Equal("calcitic", Choices(Requirement(1800), [Offered(Dolomitic), Offered(Calcitic, 5m)], null, null)[0].Offered.Material.Id);

    [Fact]
    public void Cost_is_price_times_mass()
    {
        var choice = Choices(Requirement(1800), [Offered(Calcitic, 0.5m)], null, Area.FromSquareFeet(435.6))[0];

        // 20 lb are 9.0718474 kg.
        Assert.Equal(4.5359237m, Math.Round(choice.Cost!.Value.Value, 7));
    }

    [Fact]
    public void Burnt_and_hydrated_lime_are_never_chosen()
    {
        var burnt = Stone("burnt", 140, 0) with { Status = OrganicStatus.Prohibited };
        var marked = Stone("hydrated", 120, 0) with { Category = "prohibited", Status = OrganicStatus.Prohibited };

        Assert.Empty(Choices(Requirement(1800), [Offered(burnt), Offered(marked)], null, null));
    }

    [Fact]
    public void Ash_is_no_main_lime_unless_listed_and_then_goes_last()
    {
        Assert.Empty(Choices(Requirement(1000), [Offered(Ash, listed: false)], null, null));
        Assert.Equal(["calcitic", "ash"], Choices(Requirement(1000), [Offered(Ash, 0.001m), Offered(Calcitic, 5m)], null, null).Select(c => c.Offered.Material.Id));
    }

    [Fact]
    public void Materials_without_neutralising_value_are_not_lime() =>
        Assert.Empty(Choices(Requirement(1000), [Offered(Meal), Offered(Stone("gypsum", 0, 0))], null, null));

    [Fact]
    public void A_better_stone_never_needs_more()
    {
        Gen.Select(Gen.Double[1, 20_000], Gen.Int[22, 109], Gen.Int[0, 20]).Sample((need, value, better) =>
            RateOf(need, value + better) <= RateOf(need, value));

        static MassPerArea RateOf(double need, int value) =>
            Choices(Requirement(need), [Offered(Stone("stone", value, 0))], null, null)[0].Rate;
    }

    [Fact]
    public void No_single_dose_exceeds_the_largest_single_rate()
    {
        Gen.Double[1, 40_000].Sample(need =>
        {
            var offered = Offered(Calcitic);
            var choice = Choices(Requirement(need), [offered], null, null)[0];
            return choice.Doses.Each.All(d => d.Rate.PoundsPerAcre <= offered.LargestSingleRate.PoundsPerAcre * (1 + 1e-8))
                && Math.Abs(choice.Doses.Each.Sum(d => d.Rate.PoundsPerAcre) - choice.Rate.PoundsPerAcre) < 1e-6;
        });
    }

    [Fact]
    public void The_working_changes_no_bit()
    {
        Gen.Double[1, 20_000].Sample(need =>
        {
            var sheet = new WorkingSheet();
            var silent = Choices(Requirement(need), [Offered(Calcitic)], null, null)[0].Rate;
            var shown = Choices(Requirement(need), [Offered(Calcitic)], null, null, sheet)[0].Rate;
            return silent == shown && sheet.Lines.Single().Formula == "lime-as-stone";
        });
    }

    private static Material Stone(string id, decimal neutralisingValue, decimal magnesium) => Of(
        id, "lime", Figure("neutralising-value", neutralisingValue, "% CaCO3"), Figure("magnesium", magnesium), Figure("largest-single-rate", 4356, "lb/acre"), Figure("wait-before-sowing", 0, "days"));

    private static LimeRequirement Requirement(double poundsPerAcre) => new(
        "invented", new LimeAmount.NeutralisingValue(Rate<CalciumCarbonate>.FromPoundsPerAcre(poundsPerAcre)), 0, "lb/acre", "calcium carbonate equivalent", Length.FromInches(6), new TargetPh(6.5m, null, null, InventedMaterial.Source), 6.0m, [], InventedMaterial.Source);

    private static IReadOnlyList<LimeChoice> Choices(LimeRequirement requirement, IReadOnlyList<OfferedMaterial> offered, Rating? magnesium, Area? area, WorkingSheet? working = null) =>
        LimeChoices.For(requirement, offered, InventedGround.Of(magnesium, area), working).Choices;
}
