using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Materials.Prices;
using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.Tests.Materials;

/// <summary>The invented meal: 4 % N of which 50 to 75 % comes, 3 % P2O5 of which 40 to 60 %, 2 % K2O whole.</summary>
public sealed class MaterialPricesTests
{
    [Fact]
    public void Each_nutrient_carries_the_whole_price_over_what_counts_of_it()
    {
        // 1 money a pound: 4 % × 50 % = 2 % gives 50 a pound, 4 % × 75 % = 3 % gives 33.33.
        var price = Assert.Single(MaterialPrices.Of([InventedMaterial.Offered(InventedMaterial.Meal, 1 / 0.45359237m)]));

        Assert.Equal(1, (double)price.PerPound.Value, 9);
        Assert.Equal(
            [(Nutrient.AvailableN, 50, 33.333), (Nutrient.AvailableP2O5, 83.333, 55.556), (Nutrient.K2O, 50, 50)],
            price.Nutrients.Select(n => (n.Nutrient, Math.Round((double)n.PerPound.Value, 3), Math.Round((double)n.PerPoundLow.Value, 3))));
        Assert.True(price.HoldsSeveral);
        Assert.Equal(5, price.Working.Count);
    }

    [Theory]
    [InlineData(0.51, 2)]
    [InlineData(0.49, 1)]
    public void A_nutrient_below_a_tenth_of_the_main_one_gets_no_price(double potash, int priced)
    {
        // 10 % × 50 % = 5 % of nitrogen is the main one; a tenth of it is 0.5 %.
        var meal = InventedMaterial.Of(
            "meal-with-a-trace", "plant-meal",
            InventedMaterial.Figure("total-nitrogen", 10), InventedMaterial.Figure("total-p2o5", 0), InventedMaterial.Figure("k2o", (decimal)potash),
            InventedMaterial.Figure("available-nitrogen-share", 50), InventedMaterial.Figure("k2o-available-share", 100));

        Assert.Equal(priced, Assert.Single(MaterialPrices.Of([InventedMaterial.Offered(meal, 1)])).Nutrients.Count);
    }

    [Fact]
    public void A_material_without_a_price_is_left_out() => Assert.Empty(MaterialPrices.Of([InventedMaterial.Offered(InventedMaterial.Meal)]));
}
