using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>The nitrogen of a bed through the season: what is spread when, what has come of it by then, and what is wanted.</summary>
/// <param name="Plantings">One account a planting that has a nitrogen rate, in order.</param>
/// <param name="Factors">With what share each material is counted, and what others print.</param>
/// <param name="Assumptions">What was assumed.</param>
public sealed record NitrogenInTime(IReadOnlyList<PlantingNitrogen> Plantings, IReadOnlyList<NitrogenFactor> Factors, IReadOnlyList<Assumption> Assumptions);
