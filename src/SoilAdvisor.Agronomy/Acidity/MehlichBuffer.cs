using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>The Mehlich buffer, which starts at pH 6.6. Its acidity counts per volume of soil: meq/100 cm3.</summary>
public readonly struct MehlichBuffer : IBufferOn<PerVolume>
{
    /// <inheritdoc/>
    public static Procedure Procedure => Procedure.BufferMehlich;
}
