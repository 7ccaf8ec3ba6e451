using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Agronomy.YearsAhead;

namespace SoilAdvisor.Agronomy.Tests.YearsAhead;

public sealed class TestMovementsTests
{
    private static readonly TestMovements Held = new(
    [
        Row("p-here", PlantNutrient.P2O5, Extractant.BrayP1, Extractant.BrayP1, 20, ["US-AA"]),
        Row("p-there", PlantNutrient.P2O5, Extractant.BrayP1, Extractant.BrayP1, 18, ["US-BB"]),
        Row("p-carried", PlantNutrient.P2O5, Extractant.Mehlich3, Extractant.BrayP1, 20, []) with { BandFactor = 2 },
        Row("k", PlantNutrient.K2O, Extractant.AmmoniumAcetate, Extractant.AmmoniumAcetate, 4, ["US-AA"]) with { PerCec = 0.2m, Low = 6, High = 10 },
        Row("k-no-range", PlantNutrient.K2O, Extractant.Mehlich3, Extractant.Mehlich3, 4, []) with { PerCec = 0.2m },
    ]);

    [Theory]
    [InlineData("US-AA", 20)]
    [InlineData("US-BB", 18)]
    [InlineData("US-CC", 20)]
    [InlineData(null, 20)]
    public void The_region_s_own_figure_goes_first(string? region, double pounds) =>
        Assert.Equal(pounds, Held.OfPhosphorus(Extractant.BrayP1, region).Value.PoundsPerUnit.Value);

    [Theory]
    [InlineData("US-AA", false)]
    [InlineData("US-CC", true)]
    [InlineData(null, true)]
    public void A_figure_of_another_region_is_said(string? region, bool said) =>
        Assert.Equal(said, Said(Held.OfPhosphorus(Extractant.BrayP1, region).Value).Contains("It was printed for US-AA.", StringComparison.Ordinal));

    [Fact]
    public void A_figure_carried_over_from_another_extractant_names_both_and_has_the_wider_band()
    {
        var movement = Held.OfPhosphorus(Extractant.Mehlich3, null).Value;
        Assert.Contains("printed for bray-p1 and is carried over to mehlich-3 by us", Said(movement), StringComparison.Ordinal);
        Assert.Contains("between 10 and 40", Said(movement), StringComparison.Ordinal);
        Assert.DoesNotContain("carried over", Said(Held.OfPhosphorus(Extractant.BrayP1, "US-AA").Value), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_figure_of_its_own_an_extractant_is_refused() =>
        Assert.Equal("movement-not-held", Held.OfPhosphorus(Extractant.ModifiedMorgan, "US-AA").Reason.Code);

    [Fact]
    public void Potash_for_one_unit_rises_with_the_exchange_capacity()
    {
        // 4 × (1 + 0.05 × 8) = 5.6.
        var movement = Held.OfPotassium(Extractant.AmmoniumAcetate, "US-AA", ExchangeCapacity.FromMilliequivalentsPer100Grams(8)).Value;
        Assert.Equal(5.6, movement.PoundsPerUnit.Value, 12);
        Assert.Equal(1.5, movement.BandFactor.Value, 12);
    }

    [Fact]
    public void Without_the_exchange_capacity_the_printed_ends_make_a_wider_band_and_that_is_said()
    {
        var movement = Held.OfPotassium(Extractant.AmmoniumAcetate, "US-AA", null).Value;
        Assert.Equal(6, movement.PoundsPerUnit.Value / (movement.BandFactor.Value / 1.5), 9);
        Assert.Equal(10, movement.PoundsPerUnit.Value * (movement.BandFactor.Value / 1.5), 9);
        Assert.Contains(movement.Assumptions, a => a.Code == "movement-without-cec");
        Assert.Equal("cec-needed", Held.OfPotassium(Extractant.Mehlich3, null, null).Reason.Code);
    }

    private static string Said<TForm>(TestMovement<TForm> movement)
        where TForm : IBalancedForm => movement.Assumptions.Single(a => a.Code == "pounds-for-one-unit").Text;

    private static PublishedMovement Row(string id, PlantNutrient nutrient, Extractant extractant, Extractant printedFor, decimal value, string[] regions) =>
        new(id, nutrient, extractant, printedFor, MovementUse.Projection, value, null, 1.5m, null, null, "lb/acre per mg/kg", regions, null, Citation.OurJudgement, null);
}
