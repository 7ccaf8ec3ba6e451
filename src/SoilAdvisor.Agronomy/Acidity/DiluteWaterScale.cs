using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>pH in water, one part soil to five.</summary>
public readonly struct DiluteWaterScale : IPhScale
{
    /// <inheritdoc/>
    public static Procedure Procedure => Procedure.PhWater15;
}
