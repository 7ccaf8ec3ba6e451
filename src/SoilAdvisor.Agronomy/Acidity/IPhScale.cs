using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>A way of measuring soil pH that is not one part soil to one part water.</summary>
public interface IPhScale
{
    /// <summary>The procedure that a report names for it.</summary>
    static abstract Procedure Procedure { get; }
}
