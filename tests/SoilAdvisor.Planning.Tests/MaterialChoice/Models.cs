using CsCheck;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.Tests.MaterialChoice;

/// <summary>Random choices of materials, shaped like real ones: some floors, some ceilings, one or two plantings.</summary>
internal static class Models
{
    public static MassPerArea Pounds(double value) => MassPerArea.FromPoundsPerAcre(value);

    public static MassPerArea? PoundsOrNone(double? value) => value is { } v ? Pounds(v) : null;

    /// <summary>The same models on every run: model i comes from stream i of one seed.</summary>
    public static IEnumerable<MaterialModel> Fixed(int count, int mostMaterials) =>
        Enumerable.Range(1, count).Select(i => Any(mostMaterials, priced: true).Generate(new PCG((uint)i, 20261124), null, out _));

    public static Gen<MaterialModel> Any(int mostMaterials, bool priced) =>
        from count in Gen.Int[1, mostMaterials]
        from plantings in Gen.Int[1, 2]
        from materials in Material(priced).Array[count]
        from nitrogen in Gen.Double[1, 150].Array[plantings]
        from phosphate in Gen.Double[1, 100]
        from potash in Gen.Double[1, 200]
        from phosphateCeiling in Gen.Double[0, 150]
        from hasCeiling in Gen.Bool
        select new MaterialModel(
            [.. from planting in Enumerable.Range(0, plantings) from m in materials.Select((m, i) => (m, i)) select new MaterialVariable(Offer.Of($"m{m.i}", m.m.Price, m.m.Most, m.m.Shares), planting, Pounds(m.m.Most))],
            [
                .. nitrogen.Select((n, k) => new Requirement(Nutrient.AvailableN, k, Pounds(n), Pounds(n * 1.1 + 1), "nitrogen")),
                new Requirement(Nutrient.AvailableP2O5, 0, Pounds(phosphate), null, null),
                new Requirement(Nutrient.K2O, 0, Pounds(potash), null, null),
                new Requirement(Nutrient.TotalP2O5, null, null, hasCeiling ? Pounds(phosphateCeiling) : null, hasCeiling ? "phosphate" : null),
            ],
            [new Excess(Nutrient.K2O, Pounds(potash)), new Excess(Nutrient.TotalP2O5, Pounds(phosphate)), new Excess(Nutrient.S, Pounds(0))],
            [],
            priced);

    private static Gen<(double? Price, double Most, (Nutrient, double)[] Shares)> Material(bool priced) =>
        from price in Gen.Double[0.05, 2]
        from most in Gen.Double[200, 4000]
        from n in Share(0.12)
        from p in Share(0.15)
        from k in Share(0.4)
        from s in Share(0.2)
        select ((double?)(priced ? price : null), most, new[] { (Nutrient.AvailableN, n), (Nutrient.AvailableP2O5, p * 0.6), (Nutrient.TotalP2O5, p), (Nutrient.K2O, k), (Nutrient.S, s) });

    // Half of all shares are nothing, as in real materials.
    private static Gen<double> Share(double most) =>
        from holds in Gen.Bool
        from share in Gen.Double[0.005, most]
        select holds ? share : 0;
}
