using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Sampling;

/// <summary>Spread from core to core, and where it comes from.</summary>
/// <param name="Value">The spread.</param>
/// <param name="From">Given by the grower or read from a table.</param>
/// <param name="Assumptions">What is said about it.</param>
public sealed record FieldSpread(CoefficientOfVariation Value, Origin From, IReadOnlyList<Assumption> Assumptions);
