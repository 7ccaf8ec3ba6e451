using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Planning.MaterialChoice;

/// <summary>One decision: how much of a material to spread for one planting.</summary>
/// <param name="Offered">The material.</param>
/// <param name="PlantingIndex">The planting it is spread for, from 0.</param>
/// <param name="Most">Most that may be spread then: its largest single rate, or less where a rule or a cap says so.</param>
internal sealed record MaterialVariable(OfferedMaterial Offered, int PlantingIndex, MassPerArea Most)
{
    /// <summary>The cap that sets <see cref="Most"/>; null where something else does.</summary>
    public RateCap? Cap { get; init; }

    /// <summary>Pounds of a nutrient in one pound of the material, as planned.</summary>
    /// <param name="nutrient">The nutrient.</param>
    /// <remarks>What acidifies does not pay for liming elsewhere: a neutralising value below zero counts as zero.</remarks>
    public double Share(Nutrient nutrient) => nutrient == Nutrient.CalciumCarbonate
        ? Math.Max(0, Offered.Analysis.Share(nutrient))
        : Offered.Analysis.Share(nutrient);
}
