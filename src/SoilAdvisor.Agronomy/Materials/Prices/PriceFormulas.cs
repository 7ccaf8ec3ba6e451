using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Materials.Prices;

/// <summary>What a pound of a nutrient costs in a material.</summary>
public static class PriceFormulas
{
    /// <summary>Price of one pound of a nutrient, the whole price put on it: c = P × 100 / p.</summary>
    public static Formula<(Coefficient Price, MassShare Content), Coefficient> PerPoundOfNutrient { get; } = new(
        "price-per-pound-of-nutrient",
        "Price of a pound of nutrient, the whole price put on it",
        "c = P × 100 / p",
        new Citation("noble-buy-the-numbers", "cost per actual pound of nitrogen", Evidence.Seen),
        [
            new(new Symbol("P", "price of one pound of the material", "money/lb", 0), x => x.Price.Value),
            new(new Symbol("p", "content of the material that counts", "%", 0.001, 100), x => x.Content.Percent),
        ],
        new(new Symbol("c", "price of one pound of the nutrient", "money/lb"), y => y.Value),
        v => (new Coefficient(v[0]), MassShare.FromPercent(v[1])),
        x => new Coefficient(x.Price.Value / x.Content.Fraction));
}
