using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.MethodConversions;

/// <summary>The line that carries a reading from one method to another. Slope and intercept come from one published row and serve that pair of methods only.</summary>
public static class MethodConversionFormulas
{
    private const string FromTables = "The slope is a published row of the tables; the publications print no worked example.";

    /// <summary>A nutrient by one extractant as another would find it.</summary>
    public static Formula<(SoilConcentration Reading, Coefficient Slope, Coefficient Intercept), SoilConcentration> Extracted { get; } = new(
        "method-conversion",
        "A nutrient by another method",
        "y = b × x + a",
        Citation.OurArithmetic,
        [
            new(new Symbol("x", "the nutrient by the method of the report", "mg/kg", 0), x => x.Reading.MilligramsPerKilogram),
            new(new Symbol("b", "slope of the published line", ""), x => x.Slope.Value),
            new(new Symbol("a", "intercept of the published line", "mg/kg"), x => x.Intercept.Value),
        ],
        new(new Symbol("y", "the nutrient by the other method", "mg/kg"), y => y.MilligramsPerKilogram),
        v => (SoilConcentration.FromMilligramsPerKilogram(v[0]), new Coefficient(v[1]), new Coefficient(v[2])),
        x => SoilConcentration.FromMilligramsPerKilogram((x.Slope.Value * x.Reading.MilligramsPerKilogram) + x.Intercept.Value),
        FromTables);

    /// <summary>Soil pH in one solution as another would show it.</summary>
    public static Formula<(SoilPh Reading, Coefficient Slope, Coefficient Intercept), SoilPh> OfPh { get; } = new(
        "ph-method-conversion",
        "Soil pH by another method",
        "y = b × x + a",
        Citation.OurArithmetic,
        [
            new(new Symbol("x", "pH by the method of the report", "pH", 0, 14), x => x.Reading.Value),
            new(new Symbol("b", "slope of the published line", "", 0.5, 2), x => x.Slope.Value),
            new(new Symbol("a", "intercept of the published line", "pH", -3, 3), x => x.Intercept.Value),
        ],
        new(new Symbol("y", "pH by the other method", "pH"), y => y.Value),
        v => (new SoilPh(v[0]), new Coefficient(v[1]), new Coefficient(v[2])),
        x => new SoilPh((x.Slope.Value * x.Reading.Value) + x.Intercept.Value),
        FromTables);
}
