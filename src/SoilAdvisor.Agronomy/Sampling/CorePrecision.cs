using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Sampling;

/// <summary>How near a number of cores comes.</summary>
/// <param name="Field">Spread from core to core that was counted with.</param>
/// <param name="Cores">Cores.</param>
/// <param name="Confidence">Confidence asked for.</param>
/// <param name="Reached">Precision that they reach.</param>
/// <param name="Assumptions">Where the spread comes from.</param>
public sealed record CorePrecision(
    CoefficientOfVariation Field,
    int Cores,
    Confidence Confidence,
    Precision Reached,
    IReadOnlyList<Assumption> Assumptions);
