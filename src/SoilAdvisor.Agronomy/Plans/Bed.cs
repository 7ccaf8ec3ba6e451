using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Agronomy.YearsAhead;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>One bed with its soil test and what will grow on it, in order.</summary>
/// <param name="Id">The user's id.</param>
/// <param name="Area">Ground that is spread: above zero.</param>
/// <param name="Spread">Which ground that is.</param>
/// <param name="SoilTest">Its soil test.</param>
/// <param name="Site">field or high-tunnel.</param>
/// <param name="Plantings">Crops in order; at least one.</param>
/// <param name="Applied">What was spread already.</param>
/// <param name="Previous">What stood before.</param>
/// <param name="Gap">Free time for a cover crop; null for none.</param>
/// <param name="WaterWithinFeet">Distance to surface water or a well, ft; null when not said.</param>
/// <param name="AreaShown">How the area was found, in words with units, for example "30 in × 100 ft = 250 sq ft".</param>
/// <param name="Assumptions">What was assumed about it.</param>
public sealed record Bed(
    string Id,
    Area Area,
    SpreadBasis Spread,
    SoilTest SoilTest,
    string Site,
    IReadOnlyList<Planting> Plantings,
    IReadOnlyList<AppliedMaterial> Applied,
    IReadOnlyList<PreviousStand> Previous,
    Gap? Gap,
    double? WaterWithinFeet,
    string AreaShown,
    IReadOnlyList<Assumption> Assumptions)
{
    /// <summary>Compost wanted for structure; null for none.</summary>
    public StructureAsked? Structure { get; init; }
}
