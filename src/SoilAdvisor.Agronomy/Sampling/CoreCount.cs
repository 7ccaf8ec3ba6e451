using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Sampling;

/// <summary>Cores for a wanted precision.</summary>
/// <param name="Field">Spread from core to core that was counted with.</param>
/// <param name="Wanted">Precision asked for.</param>
/// <param name="Confidence">Confidence asked for.</param>
/// <param name="Cores">Cores to take: by Student's t, since no field's spread is known exactly.</param>
/// <param name="IfSpreadIsKnown">Cores by the normal distribution, enough where the spread is known from many cores.</param>
/// <param name="Assumptions">Where the spread comes from.</param>
public sealed record CoreCount(
    CoefficientOfVariation Field,
    Precision Wanted,
    Confidence Confidence,
    int Cores,
    int IfSpreadIsKnown,
    IReadOnlyList<Assumption> Assumptions);
