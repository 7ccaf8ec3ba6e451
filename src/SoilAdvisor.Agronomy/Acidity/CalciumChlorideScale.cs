using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>pH in 0.01 M calcium chloride.</summary>
public readonly struct CalciumChlorideScale : IPhScale
{
    /// <inheritdoc/>
    public static Procedure Procedure => Procedure.PhCalciumChloride;
}
