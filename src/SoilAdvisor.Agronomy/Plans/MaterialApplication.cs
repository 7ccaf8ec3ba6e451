using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>One material spread on one bed at one time.</summary>
/// <param name="Offered">The material as the farm has it.</param>
/// <param name="PlantingIndex">Planting it is for, from 0.</param>
/// <param name="Rate">Rate per area of ground spread, as it is spread (moist).</param>
/// <param name="PerBed">Mass for the bed.</param>
/// <param name="Volume">Volume measure with its published density; null: weigh it.</param>
/// <param name="Cost">Cost; null when no price was given.</param>
/// <param name="When">When to spread it, in words.</param>
/// <param name="SpreadBy">Last day to spread it; null when the planting date is not known.</param>
/// <param name="Purpose">Which needs it serves, in words.</param>
public sealed record MaterialApplication(
    OfferedMaterial Offered,
    int PlantingIndex,
    MassPerArea Rate,
    Mass PerBed,
    VolumeMeasure? Volume,
    Money? Cost,
    string When,
    DateOnly? SpreadBy,
    string Purpose)
{
    /// <summary>The cap that this rate has reached; null where none is reached.</summary>
    public RateCap? Cap { get; init; }
}
