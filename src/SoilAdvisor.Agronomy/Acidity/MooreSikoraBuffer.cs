using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>The Moore-Sikora buffer, built to imitate Adams-Evans: starts at pH 8.00, acidity in meq/100 g.</summary>
public readonly struct MooreSikoraBuffer : IBufferOn<PerMass>
{
    /// <inheritdoc/>
    public static Procedure Procedure => Procedure.BufferMooreSikora;
}
