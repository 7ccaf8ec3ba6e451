using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>A reading in another unit of the same test, with what was assumed on the way.</summary>
/// <param name="Amount">The amount in the wanted unit.</param>
/// <param name="Factor">Exact factor applied; 1 when the unit was the same.</param>
/// <param name="Assumptions">What was assumed; empty for none.</param>
public readonly record struct ConvertedReading(Amount Amount, decimal Factor, IReadOnlyList<Assumption> Assumptions);
