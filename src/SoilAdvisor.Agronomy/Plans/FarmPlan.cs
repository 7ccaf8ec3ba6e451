using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.FieldWork;
using SoilAdvisor.Agronomy.CoverCrops.Seasons;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Materials.Prices;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>The plan of a farm.</summary>
/// <param name="Farm">Name as given; null when none was.</param>
/// <param name="Date">Date the plan is made for.</param>
/// <param name="Guide">Guide used.</param>
/// <param name="GuideReason">Why that guide.</param>
/// <param name="OtherGuides">Other guides that cover the tests' methods, nearest first.</param>
/// <param name="RateTable">Rate table read with it; null where none may be.</param>
/// <param name="Objective">What was minimised, in plain words.</param>
/// <param name="Beds">The beds in the order given.</param>
/// <param name="Purchases">Materials over all beds.</param>
/// <param name="Findings">Findings that concern the farm.</param>
/// <param name="Warnings">Warnings that concern the farm.</param>
/// <param name="Assumptions">Assumptions that concern the farm.</param>
/// <param name="Partial">True when a bed is refused or partly planned: totals leave it out.</param>
/// <param name="Cost">Price of what is spread over all beds; null when nothing is priced.</param>
/// <param name="Choice">How the materials were chosen and what is to pay.</param>
public sealed record FarmPlan(
    string? Farm,
    DateOnly Date,
    Guide Guide,
    string GuideReason,
    IReadOnlyList<string> OtherGuides,
    Crops.RateTable? RateTable,
    string Objective,
    IReadOnlyList<BedPlan> Beds,
    IReadOnlyList<Purchase> Purchases,
    IReadOnlyList<Finding> Findings,
    IReadOnlyList<string> Warnings,
    IReadOnlyList<Assumption> Assumptions,
    bool Partial,
    Money? Cost,
    FarmChoice Choice)
{
    /// <summary>A season of cover crops over all beds with gaps; null when none was asked or no bed has a gap.</summary>
    public CoverCropSeason? CoverSeason { get; init; }

    /// <summary>Likely mix-ups in the soil tests, each with the id of its test; empty for none. They change no number.</summary>
    public IReadOnlyList<(string SoilTest, Suspicion Suspicion)> Suspicions { get; init; } = [];

    /// <summary>The plan as it is carried out; null where nothing is spread.</summary>
    public FieldWorkPlan? FieldWork { get; init; }

    /// <summary>What a pound of nutrient costs in each priced material; empty without prices.</summary>
    public IReadOnlyList<MaterialPrice> MaterialPrices { get; init; } = [];

    /// <summary>What laboratory tests of the materials say beside their nutrients; empty where none were tested.</summary>
    public IReadOnlyList<MaterialTestFinding> MaterialTests { get; init; } = [];
}
