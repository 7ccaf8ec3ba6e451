using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.FieldWork;

/// <summary>A plan as it is carried out.</summary>
/// <param name="Measures">What is measured and spread with.</param>
/// <param name="Passes">Every pass over the beds, in order.</param>
/// <param name="Mixes">What may be mixed; empty for nothing.</param>
/// <param name="NotMixed">Why other things are not mixed, in sentences.</param>
/// <param name="Strips">What a strip should get, material by material.</param>
/// <param name="Check">The one check proposed; null where nothing is spread and no soil test has a day.</param>
/// <param name="Working">The arithmetic of the strips; empty when not asked for.</param>
public sealed record FieldWorkPlan(
    FieldMeasures Measures,
    IReadOnlyList<FieldPass> Passes,
    IReadOnlyList<MixingBatch> Mixes,
    IReadOnlyList<string> NotMixed,
    IReadOnlyList<StripCalibration> Strips,
    ProposedCheck? Check,
    IReadOnlyList<WorkingLine> Working);
