using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>One stone that meets a lime requirement.</summary>
/// <param name="Offered">The stone.</param>
/// <param name="Rate">Rate of the stone as spread.</param>
/// <param name="PerBed">Mass for the bed; null without a bed.</param>
/// <param name="Doses">The rate split into single doses, in order.</param>
/// <param name="Volume">Volume measure; null: weigh it.</param>
/// <param name="Cost">Cost for the bed; null without a price.</param>
/// <param name="Reasons">Why this stone, or why not, in plain sentences.</param>
/// <param name="Supplied">Calcium, magnesium, potassium and neutralising value that come with it.</param>
public sealed record LimeChoice(
    OfferedMaterial Offered,
    MassPerArea Rate,
    Mass? PerBed,
    IReadOnlyList<MassPerArea> Doses,
    VolumeMeasure? Volume,
    Money? Cost,
    IReadOnlyList<string> Reasons,
    NutrientVector Supplied);
