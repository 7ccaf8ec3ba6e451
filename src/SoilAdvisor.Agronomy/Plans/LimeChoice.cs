using SoilAdvisor.Agronomy.Acidity.Stones;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>One stone that meets a lime requirement, or a part of it.</summary>
/// <param name="Offered">The stone.</param>
/// <param name="How">The rule from the requirement to the stone.</param>
/// <param name="Rate">Rate of the stone as spread, over all doses.</param>
/// <param name="Covers">Part of the requirement that it meets, above 0 and at most 1; below 1 only where potash limits ash.</param>
/// <param name="PerBed">Mass for the bed; null without a bed.</param>
/// <param name="Doses">The rate split into single doses, in order.</param>
/// <param name="Volume">Volume measure; null: weigh it.</param>
/// <param name="Cost">Cost for the bed; null without a price.</param>
/// <param name="CostPerTon">Cost of one short ton of what the requirement counts; null without a price. Ranks the stones.</param>
/// <param name="Reasons">Why this stone, or why not, in plain sentences.</param>
/// <param name="Supplied">Calcium, magnesium, potassium and neutralising value that come with it.</param>
public sealed record LimeChoice(
    OfferedMaterial Offered,
    StoneRate How,
    MassPerArea Rate,
    double Covers,
    Mass? PerBed,
    LimeDoses Doses,
    VolumeMeasure? Volume,
    Money? Cost,
    Money? CostPerTon,
    IReadOnlyList<string> Reasons,
    NutrientVector Supplied);
