using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Planning.Beds;

/// <summary>What was spread on a bed after its soil was sampled. Where the day of sampling is not known, everything counts as later.</summary>
internal static class SpreadSinceSample
{
    public static IEnumerable<AppliedMaterial> Materials(Bed bed) =>
        bed.Applied.Where(a => bed.SoilTest.Sampled is not { } sampled || a.Date >= sampled);

    public static NutrientVector Of(Bed bed) =>
        Materials(bed).Select(a => Supplied(a, bed)).Aggregate(NutrientVector.Zero, (a, b) => a + b);

    public static NutrientVector Supplied(AppliedMaterial applied, Bed bed) => applied.Analysis.Supplies(MassPerArea.Of(applied.Amount, bed.Area));
}
