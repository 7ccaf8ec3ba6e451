using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Materials.Prices;

/// <summary>
/// What a pound of available nutrient costs in each priced material. Of a material with several nutrients the whole price is put on each in
/// turn: the figures stand beside each other and are never added.
/// </summary>
public static class MaterialPrices
{
    private static readonly Nutrient[] Priced = [Nutrient.AvailableN, Nutrient.AvailableP2O5, Nutrient.K2O];

    // A nutrient below a tenth of the material's main one is not what anybody buys it for, and its price would be absurd (ours).
    private const double PartOfMain = 0.1;

    /// <summary>The materials that have a price, cheapest nitrogen first, then by name.</summary>
    /// <param name="offered">Materials as the farm can have them.</param>
    public static IReadOnlyList<MaterialPrice> Of(IEnumerable<OfferedMaterial> offered) =>
    [
        .. offered.Where(o => o.PricePerKilogram is not null).Select(One)
            .OrderBy(p => p.Nutrients.FirstOrDefault(n => n.Nutrient == Nutrient.AvailableN)?.PerPound.Value ?? decimal.MaxValue)
            .ThenBy(p => p.Offered.Material.Name, StringComparer.Ordinal),
    ];

    private static MaterialPrice One(OfferedMaterial offered)
    {
        var working = new WorkingSheet();
        working.Section(offered.Material.Name);
        var price = offered.PricePerKilogram!.Value;
        var perPound = price with { Value = price.Value * (decimal)Mass.FromPounds(1).Kilograms };
        var nutrients = new List<NutrientPrice>();
        var main = Priced.Max(n => offered.Analysis.Share(n));
        foreach (var nutrient in Priced)
        {
            var low = offered.Analysis.Share(nutrient);
            if (low <= 0 || low < main * PartOfMain)
            {
                continue;
            }

            var high = Math.Max(low, offered.Analysis.High.TryGetValue(nutrient, out var most) ? most : low);
            var sources = offered.Analysis.Sources.TryGetValue(nutrient, out var cited) && cited.Count > 0 ? cited : [Citation.OurArithmetic];
            nutrients.Add(new NutrientPrice(
                nutrient,
                MassShare.FromFraction(low),
                MassShare.FromFraction(high),
                Per(low),
                high > low ? Per(high) : Per(low, silent: true),
                sources));

            Money Per(double share, bool silent = false)
            {
                var found = PriceFormulas.PerPoundOfNutrient.Of(
                    (new Coefficient((double)perPound.Value), MassShare.FromFraction(share)), silent ? null : working, Origin.Given("price of the material"), Origin.From(sources[0]));
                return perPound with { Value = (decimal)found.Value };
            }
        }

        return new MaterialPrice(offered, perPound, nutrients, working.Lines);
    }
}
