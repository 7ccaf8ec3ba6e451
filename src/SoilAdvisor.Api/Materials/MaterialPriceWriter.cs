using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Materials.Prices;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Working;
using UnitsNet;

namespace SoilAdvisor.Api.Materials;

/// <summary>Writes what a pound of nutrient costs.</summary>
internal static class MaterialPriceWriter
{
    private const string WholePrice = "The whole price stands on each nutrient in turn: never add them.";

    public static IReadOnlyList<MaterialPriceAnswer>? Write(IReadOnlyList<MaterialPrice> prices, Calculation calculation) => prices.Count == 0
        ? null
        : [.. prices.Select(p => new MaterialPriceAnswer(
            p.Offered.Material.Id,
            p.Offered.Material.Name,
            Price(p.PerPound, calculation.Units),
            [.. p.Nutrients.Select(n => new NutrientPriceAnswer(
                n.Nutrient.Symbol(), Units.Rounded(n.Content.Percent), Units.Rounded(n.ContentHigh.Percent), Price(n.PerPound, calculation.Units), Price(n.PerPoundLow, calculation.Units), calculation.Cite(n.Sources[0])))],
            p.HoldsSeveral ? WholePrice : p.Nutrients.Count == 0 ? "None of its nitrogen, phosphate or potash counts in the season." : null,
            calculation.Asked.Working ? WorkingWriter.Write(p.Working, calculation.Bibliography) : null,
            calculation.Cite(Citation.OurArithmetic)))];

    private static PriceAnswer Price(Money perPound, Units units)
    {
        var value = units.Metric ? perPound.Value / (decimal)Mass.FromPounds(1).Kilograms : perPound.Value;
        return new PriceAnswer(decimal.Round(value, 3, MidpointRounding.AwayFromZero), perPound.Currency, units.Metric ? "kg" : "lb");
    }
}
