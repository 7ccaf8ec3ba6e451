namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>How a lime requirement is published.</summary>
public enum LimeMethodKind
{
    /// <summary>As an equation of the catalogue with parameters from a table.</summary>
    Equation,

    /// <summary>As one equation of the same form for each target pH, its coefficients in a table.</summary>
    TargetEquations,

    /// <summary>As printed cells by what is read and the target pH.</summary>
    Table,

    /// <summary>Known to exist, its numbers not held: the laboratory's own rate is used.</summary>
    LaboratoryOnly,
}
