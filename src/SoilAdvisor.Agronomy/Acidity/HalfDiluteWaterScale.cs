using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>pH in water, one part soil to two and a half.</summary>
public readonly struct HalfDiluteWaterScale : IPhScale
{
    /// <inheritdoc/>
    public static Procedure Procedure => Procedure.PhWater125;
}
