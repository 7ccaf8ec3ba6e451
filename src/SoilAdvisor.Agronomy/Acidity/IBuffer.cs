using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>A lime-requirement buffer by name.</summary>
public interface IBuffer
{
    /// <summary>The procedure that a report names for it.</summary>
    static abstract Procedure Procedure { get; }
}
