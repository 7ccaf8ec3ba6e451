using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>The Adams-Evans buffer, which starts at pH 8.00. Its acidity counts per mass of soil: meq/100 g.</summary>
public readonly struct AdamsEvansBuffer : IBufferOn<PerMass>
{
    /// <inheritdoc/>
    public static Procedure Procedure => Procedure.BufferAdamsEvans;
}
