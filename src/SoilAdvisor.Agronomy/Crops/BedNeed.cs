using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>All needs and credits of a bed, what could not be said, and what was assumed.</summary>
/// <param name="Needs">The needs.</param>
/// <param name="Credits">The credits.</param>
/// <param name="Refused">Nutrients without an answer, each with what is missing; the pointer is the JSON path inside the bed.</param>
/// <param name="Assumptions">What was assumed.</param>
public sealed record BedNeed(
    IReadOnlyList<NutrientNeed> Needs,
    IReadOnlyList<NutrientCredit> Credits,
    IReadOnlyList<(string Pointer, Refusal Refusal)> Refused,
    IReadOnlyList<Assumption> Assumptions);
