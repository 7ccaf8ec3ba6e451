using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Planning.Beds;
using SoilAdvisor.Planning.FarmWide;
using SoilAdvisor.Planning.MaterialChoice;
using SoilAdvisor.Planning.Tests.MaterialChoice;
using UnitsNet;

namespace SoilAdvisor.Planning.Tests.FarmWide;

/// <summary>Small invented farms: a few different needs, a few products in packs, limits that bind. The same farms on every run.</summary>
internal static class Farms
{
    public static FarmModel Random(int seed, int groups, int products)
    {
        var random = new Random(20261125 + seed);
        var offers = Enumerable.Range(0, products).Select(p => Product(p, random)).ToList();
        var made = Enumerable.Range(0, groups).Select(g => Group(g, offers, random)).ToList();
        return new FarmModel(
            made,
            [.. offers.Select(o => FarmProduct.Of(o, 0))],
            new FarmLimits(
                ProductsPerBed: random.Next(1, 3),
                Products: random.Next(1, products + 1),
                SmallestRate: random.Next(2) == 0 ? MassPerArea.FromPoundsPerAcre(random.Next(20, 120)) : null,
                LabourPerPass: random.Next(2) == 0 ? new Money(0.5m, "USD") : null,
                Seconds: 20),
            true);
    }

    private static OfferedMaterial Product(int number, Random random)
    {
        double Share(double most) => random.Next(2) == 0 ? 0 : 0.01 + (random.NextDouble() * most);
        var phosphate = Share(0.15);
        var offered = Offer.Of($"m{number}", 0.1 + random.NextDouble(), 4000, (Nutrient.AvailableN, Share(0.12)), (Nutrient.AvailableP2O5, phosphate * 0.6), (Nutrient.TotalP2O5, phosphate), (Nutrient.K2O, Share(0.3)));
        return offered with
        {
            Pack = random.Next(4) == 0 ? null : Mass.FromPounds(random.Next(1, 6) * 10),
            Freight = random.Next(3) == 0 ? new Money(random.Next(1, 10), "USD") : null,
            OnHand = random.Next(3) == 0 ? Mass.FromPounds(random.Next(1, 40)) : null,
        };
    }

    private static NeedGroup Group(int number, List<OfferedMaterial> offers, Random random)
    {
        var (n, p, k) = (20 + random.Next(100), random.Next(60), random.Next(100));
        var model = new MaterialModel(
            [.. offers.Select(o => new MaterialVariable(o, 0, o.LargestSingleRate))],
            [
                new Requirement(Nutrient.AvailableN, 0, Models.Pounds(n), Models.Pounds(n * 1.4), "nitrogen"),
                new Requirement(Nutrient.AvailableP2O5, 0, Models.Pounds(p), null, null),
                new Requirement(Nutrient.K2O, 0, Models.Pounds(k), null, null),
                .. random.Next(3) == 0 ? [new Requirement(Nutrient.TotalP2O5, null, null, Models.Pounds((p * 2) + 20), "phosphate")] : Array.Empty<Requirement>(),
            ],
            [new Excess(Nutrient.K2O, Models.Pounds(k)), new Excess(Nutrient.TotalP2O5, Models.Pounds(p))],
            [],
            true);
        var beds = Enumerable.Range(number * 10, random.Next(1, 6)).ToList();
        return new NeedGroup(MaterialPlan.Best(model), beds, beds.Count * 0.02);
    }
}
