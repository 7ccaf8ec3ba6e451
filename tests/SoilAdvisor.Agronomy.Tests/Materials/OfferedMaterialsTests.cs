using SoilAdvisor.Agronomy.Materials;
using UnitsNet;
using static SoilAdvisor.Agronomy.Tests.Materials.InventedMaterial;

namespace SoilAdvisor.Agronomy.Tests.Materials;

public class OfferedMaterialsTests
{
    [Fact]
    public void A_price_for_a_bag_becomes_a_price_for_a_kilogram()
    {
        var offered = OfferedMaterials.For(Meal, Analysis(Meal), new Money(45.359237m, "USD"), Mass.FromPounds(50), Mass.FromPounds(10), listed: true).Value;

        // 50 lb are 22.6796185 kg exactly, so 45.359237 for them is 2 a kilogram.
        Assert.Equal(2m, Math.Round(offered.PricePerKilogram!.Value.Value, 10));
        Assert.Equal("USD", offered.PricePerKilogram.Value.Currency);
        Assert.Equal(10, offered.OnHand!.Value.Pounds, 9);
    }

    [Fact]
    public void No_price_is_ever_assumed() =>
        Assert.Null(OfferedMaterials.For(Meal, Analysis(Meal), null, null, null, listed: true).Value.PricePerKilogram);

    [Fact]
    public void A_price_without_its_amount_is_refused()
    {
        Assert.Equal("price-without-amount", OfferedMaterials.For(Meal, Analysis(Meal), new Money(10, "USD"), null, null, true).Reason.Code);
        Assert.Equal("price-without-amount", OfferedMaterials.For(Meal, Analysis(Meal), new Money(10, "USD"), Mass.Zero, null, true).Reason.Code);
    }

    [Fact]
    public void A_negative_price_is_refused_and_a_gift_is_not()
    {
        Assert.Equal("price-negative", OfferedMaterials.For(Meal, Analysis(Meal), new Money(-0.01m, "USD"), Mass.FromPounds(50), null, true).Reason.Code);
        Assert.Equal(0, OfferedMaterials.For(Meal, Analysis(Meal), new Money(0, "USD"), Mass.FromPounds(50), null, true).Value.PricePerKilogram!.Value.Value);
    }

    [Fact]
    public void A_material_without_a_largest_rate_or_a_wait_is_never_planned()
    {
        var withoutRate = Meal with { Values = [.. Meal.Values.Where(v => v.Property != "largest-single-rate")] };
        var withoutWait = Meal with { Values = [.. Meal.Values.Where(v => v.Property != "wait-before-sowing")] };

        Assert.Equal("material-without-largest-rate", OfferedMaterials.For(withoutRate, Analysis(Meal), null, null, null, true).Reason.Code);
        Assert.Equal("material-without-wait", OfferedMaterials.For(withoutWait, Analysis(Meal), null, null, null, true).Reason.Code);
    }

    [Fact]
    public void Largest_rate_and_wait_come_from_the_tables()
    {
        var offered = Offered(Meal);

        Assert.Equal(1500, offered.LargestSingleRate.PoundsPerAcre, 9);
        Assert.Equal(14, offered.WaitBeforeSowingDays);
    }
}
