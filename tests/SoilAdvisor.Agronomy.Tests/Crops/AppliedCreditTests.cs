using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Tests.Crops;

public sealed class AppliedCreditTests
{
    private static readonly DateOnly Sampled = new(2026, 3, 10);

    private static readonly Material Meal = new("meal", "Invented meal", "plant-meal", "as-sold", ManureKind.None, OrganicStatus.Allowed, "", true, [], [], [], Citation.OurJudgement, null);

    [Theory]
    [InlineData(-1, 0)]
    [InlineData(0, 2)]
    [InlineData(1, 2)]
    public void Only_what_was_spread_on_or_after_the_day_of_sampling_counts(int days, int credits) =>
        Assert.Equal(credits, Credits(Sampled, Spread(Sampled.AddDays(days))).Credits.Count);

    [Fact]
    public void Without_a_day_of_sampling_everything_counts_and_that_is_said()
    {
        var answer = Credits(null, Spread(Sampled.AddDays(-400)));

        Assert.Equal(2, answer.Credits.Count);
        Assert.Equal("sampling-date-unknown", Assert.Single(answer.Assumptions).Code);
    }

    [Fact]
    public void With_nothing_spread_nothing_is_assumed() => Assert.Empty(Credits(null).Assumptions);

    [Fact]
    public void The_credit_is_the_rate_times_the_share_as_a_range()
    {
        // 10 lb on 435.6 sq ft is 1000 lb/acre; 4 % planned and 6 % at most.
        var nitrogen = Assert.Single(Credits(Sampled, Spread(Sampled)).Credits, c => c.Nutrient == PlantNutrient.N);

        Assert.Equal(40, nitrogen.Low.PoundsPerAcre, 9);
        Assert.Equal(60, nitrogen.High.PoundsPerAcre, 9);
        Assert.Equal("Invented meal, spread 2026-03-10", nitrogen.From);
    }

    private static AppliedCredit Credits(DateOnly? sampled, params AppliedMaterial[] applied) =>
        AppliedCredits.For(InventedField.Test() with { Sampled = sampled }, applied, Area.FromSquareFeet(435.6));

    private static AppliedMaterial Spread(DateOnly date) => new(
        Meal,
        new MaterialAnalysis(
            new Dictionary<Nutrient, double> { [Nutrient.AvailableN] = 0.04, [Nutrient.K2O] = 0.02, [Nutrient.Ca] = 0, [Nutrient.C] = 0.4 },
            new Dictionary<Nutrient, double> { [Nutrient.AvailableN] = 0.06 },
            new Dictionary<Nutrient, IReadOnlyList<Citation>>(),
            []),
        Mass.FromPounds(10),
        date,
        null);
}
