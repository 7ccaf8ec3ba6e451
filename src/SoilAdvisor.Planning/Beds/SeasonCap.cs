using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Planning.Beds;

/// <summary>The tightest cap of a material on a bed, less what was spread of it since the sample.</summary>
/// <param name="Cap">The cap.</param>
/// <param name="Left">What this plan may still spread in all.</param>
internal sealed record SeasonCap(RateCap Cap, MassPerArea Left)
{
    public static SeasonCap? Of(OfferedMaterial material, Bed bed)
    {
        if (material.TightestCap is not { } cap)
        {
            return null;
        }

        var spread = SpreadSinceSample.Materials(bed)
            .Where(a => a.Material.Id == material.Material.Id)
            .Select(a => MassPerArea.Of(a.Amount, bed.Area))
            .Aggregate(default(MassPerArea), (a, b) => a + b);
        return new SeasonCap(cap, MassPerArea.Larger(cap.Most - spread, default));
    }
}
