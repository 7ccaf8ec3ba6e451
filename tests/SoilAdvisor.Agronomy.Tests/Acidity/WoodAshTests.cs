using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Tests.Materials;
using UnitsNet;
using static SoilAdvisor.Agronomy.Tests.Materials.InventedMaterial;

namespace SoilAdvisor.Agronomy.Tests.Acidity;

public class WoodAshTests
{
    private static readonly Material Ash = Of(
        "ash", "lime", Figure("neutralising-value", 40, "% CaCO3"), Figure("k2o", 5), Figure("k2o-available-share", 100), Figure("largest-single-rate", 871, "lb/acre"), Figure("wait-before-sowing", 14, "days"));

    [Fact]
    public void Potash_limits_ash_to_what_the_bed_needs_of_it()
    {
        // 20 lb/acre of K2O at 5 % is 400 lb/acre of ash, which brings 160 of the 1000 lb/acre of CaCO3.
        var choice = Choice(20);

        Assert.Equal(400, choice.Rate.PoundsPerAcre, 6);
        Assert.Equal(0.16, choice.Covers, 9);
        Assert.Equal(160, choice.Supplied[Nutrient.CalciumCarbonate].PoundsPerAcre, 6);
        Assert.Equal(20, choice.Supplied[Nutrient.K2O].PoundsPerAcre, 6);
        Assert.Contains(choice.Reasons, r => r.Contains("meet the rest with limestone", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_known_need_ash_keeps_to_one_published_dose()
    {
        var choice = Choice(null);

        Assert.Equal(871, choice.Rate.PoundsPerAcre, 6);
        Assert.Single(choice.Doses.Each);
    }

    [Fact]
    public void A_small_requirement_is_met_whole() => Assert.Equal(1, Choice(1000, 100).Covers);

    [Fact]
    public void Where_no_potash_is_needed_ash_is_no_choice()
    {
        var selection = LimeChoices.For(Requirement(1000, 6.5m), [Offered(Ash)], InventedGround.Of() with { PotashNeed = default(MassPerArea) });

        Assert.Empty(selection.Choices);
        Assert.Contains("no potash", Assert.Single(selection.Excluded).Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(5.7, false)]
    [InlineData(5.8, true)]
    public void Ash_is_not_for_a_crop_that_wants_acid_soil(double target, bool chosen) =>
        Assert.Equal(chosen, LimeChoices.For(Requirement(500, (decimal)target), [Offered(Ash)], InventedGround.Of()).Choices.Count == 1);

    [Fact]
    public void Gypsum_is_no_lime_and_burnt_lime_never_enters_a_plan()
    {
        var gypsum = Of("gypsum", "mineral", Figure("neutralising-value", 0, "% CaCO3"));
        var burnt = Of("burnt", "prohibited", Figure("neutralising-value", null, "% CaCO3", low: 140)) with { Status = OrganicStatus.Prohibited };

        var never = LimeChoices.NeverLime([gypsum, burnt, Ash]);

        Assert.Equal(["gypsum", "burnt"], never.Select(n => n.Material.Id));
        Assert.Contains("neither way", never[0].Reason, StringComparison.Ordinal);
        Assert.Contains("Prohibited", never[1].Reason, StringComparison.Ordinal);
    }

    private static LimeChoice Choice(double? potash, double need = 1000) => Assert.Single(LimeChoices.For(
        Requirement(need, 6.5m), [Offered(Ash)], InventedGround.Of() with { PotashNeed = potash is { } pounds ? MassPerArea.FromPoundsPerAcre(pounds) : null }).Choices);

    private static LimeRequirement Requirement(double pounds, decimal target) => new(
        "invented", new LimeAmount.NeutralisingValue(Rate<CalciumCarbonate>.FromPoundsPerAcre(pounds)), 0, "lb/acre", "calcium carbonate equivalent", Length.FromInches(6), InventedLime.Target(target), 5.0m, [], InventedMaterial.Source);
}
