using SoilAdvisor.Agronomy.FieldWork;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Planning.FieldWork;

/// <summary>What a strip should get of each material, at the rates that most beds get.</summary>
internal static class Strips
{
    // More than these would not be tried; the weight for another rate is in proportion.
    private const int RatesPerMaterial = 3;

    public static IReadOnlyList<StripCalibration> Of(IReadOnlyList<CarriedMaterial> carried, FieldMeasures measures, WorkingSheet? working) =>
    [
        .. carried.GroupBy(c => c.Offered.Material.Id, StringComparer.Ordinal).SelectMany(material => material
            .GroupBy(c => Math.Round(c.Spread.Rate.PoundsPerAcre, 3))
            .OrderByDescending(g => g.Count())
            .ThenByDescending(g => g.Key)
            .Take(RatesPerMaterial)
            .Select(g => One(g.First(), [.. g.Select(c => c.Spread.Bed).Distinct(StringComparer.Ordinal)], measures, working))),
    ];

    private static StripCalibration One(CarriedMaterial first, IReadOnlyList<string> beds, FieldMeasures measures, WorkingSheet? working)
    {
        var (length, swath) = (Origin.Given("length of the strip"), Origin.Given("width of the swath"));
        working?.Section($"Strip for {first.Offered.Material.Name}");
        return new StripCalibration(
            first.Offered.Material,
            first.Spread.Rate,
            beds,
            StripFormulas.TargetOnStrip.Of((first.Spread.Rate, measures.StripLength, measures.SwathWidth), working, Origin.From(Citation.OurArithmetic), length, swath),
            StripFormulas.RateOfStrip.Of((Mass.FromPounds(1), measures.StripLength, measures.SwathWidth), working, Origin.Given("one pound caught"), length, swath));
    }
}
