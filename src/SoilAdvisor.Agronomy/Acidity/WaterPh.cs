using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>The soil pH in water that a target can be compared with.</summary>
/// <param name="Value">pH in water; to two decimals where it is an estimate.</param>
/// <param name="From">Where it comes from: the report, or the line that estimated it.</param>
/// <param name="IsEstimate">True when it was converted from another scale.</param>
/// <param name="Assumptions">What was assumed.</param>
public sealed record WaterPh(decimal Value, Origin From, bool IsEstimate, IReadOnlyList<Assumption> Assumptions);
