namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>How a lime requirement is published.</summary>
public enum LimeMethodKind
{
    /// <summary>As an equation of the catalogue with parameters from a table.</summary>
    Equation,

    /// <summary>As printed cells by buffer pH and target pH.</summary>
    Table,
}
