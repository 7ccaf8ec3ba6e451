namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>What the rows of a lime table stand for.</summary>
public enum LimeRows
{
    /// <summary>Printed values: between two of them the more acid one counts.</summary>
    Points,

    /// <summary>Upper limits of classes of soil pH, each belonging to its own class.</summary>
    UpperLimits,
}
