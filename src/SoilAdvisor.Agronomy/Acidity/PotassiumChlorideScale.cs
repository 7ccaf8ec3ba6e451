using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>pH in 1 M potassium chloride.</summary>
public readonly struct PotassiumChlorideScale : IPhScale
{
    /// <inheritdoc/>
    public static Procedure Procedure => Procedure.PhPotassiumChloride;
}
