using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>Compost spread for structure, and what it costs in phosphorus.</summary>
/// <param name="Offered">The material.</param>
/// <param name="Asked">What was wanted.</param>
/// <param name="Rate">What is spread: not more than its limits.</param>
/// <param name="LimitedBy">Why it is less than wanted; null when it is not.</param>
/// <param name="Phosphate">Total phosphate it lays down, low end of the analysis.</param>
/// <param name="PhosphateHigh">The same, high end.</param>
/// <param name="YearsOfRemoval">Years of harvests that take as much away, by the middle of the analysis; null where the removal is not known.</param>
/// <param name="Rise">Expected rise of the phosphorus test, mg/kg; null where no figure belongs to the extractant.</param>
/// <param name="Assumptions">What was assumed.</param>
public sealed record StructureDressing(
    OfferedMaterial Offered,
    MassPerArea Asked,
    MassPerArea Rate,
    string? LimitedBy,
    Rate<TotalP2O5> Phosphate,
    Rate<TotalP2O5> PhosphateHigh,
    double? YearsOfRemoval,
    ChangeOfTest? Rise,
    IReadOnlyList<Assumption> Assumptions)
{
    /// <summary>What it supplies in the season, low end.</summary>
    public NutrientVector Supplied => Offered.Analysis.Supplies(Rate);

    /// <summary>Plant-available nitrogen of the season, low end.</summary>
    public MassPerArea Nitrogen => Supplied[Nutrient.AvailableN];

    /// <summary>Plant-available nitrogen of the season, high end.</summary>
    public MassPerArea NitrogenHigh => Rate * Math.Max(Offered.Analysis.Share(Nutrient.AvailableN), Offered.Analysis.High.GetValueOrDefault(Nutrient.AvailableN));
}
