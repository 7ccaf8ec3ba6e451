using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>The SMP buffer, which starts at pH 7.5. Its acidity counts per mass of soil: meq/100 g.</summary>
public readonly struct SmpBuffer : IBufferOn<PerMass>
{
    /// <inheritdoc/>
    public static Procedure Procedure => Procedure.BufferSmp;
}
