using SoilAdvisor.Planning.Beds;
using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.FarmWide;

/// <summary>
/// Beds that need the same per area and may be spread with the same: they get the same treatment, so the farm's choice grows with the
/// number of different needs and not with the number of beds.
/// </summary>
/// <param name="Alone">The best for one of them when nothing ties the beds of the farm together.</param>
/// <param name="Beds">Their places in the request.</param>
/// <param name="Acres">Their ground together, acres.</param>
internal sealed record NeedGroup(MaterialPlan Alone, IReadOnlyList<int> Beds, double Acres)
{
    /// <summary>What each of them needs and may get, per area.</summary>
    public MaterialModel Model => Alone.Model;

    /// <summary>What a floor can reach at best, bed by bed, pounds per acre; null where nothing is asked.</summary>
    /// <param name="requirement">Its place in the model.</param>
    public double? Reached(int requirement) => Model.Requirements[requirement] is { AsksForSomething: true, Floor: { } floor }
        ? floor.PoundsPerAcre - Alone.Solution.Missed[requirement].PoundsPerAcre
        : null;
}
