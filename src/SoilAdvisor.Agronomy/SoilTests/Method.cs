namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>How a value was measured. A reading without it means nothing.</summary>
/// <param name="Extractant">Extractant; null for analytes that take none.</param>
/// <param name="Detection">How the extract was read; null when the laboratory did not say.</param>
/// <param name="Procedure">Procedure of pH, buffer pH, salts, organic matter or exchange capacity; null otherwise or when not said.</param>
/// <param name="Basis">What the number counts.</param>
public readonly record struct Method(Extractant? Extractant, Detection? Detection, Procedure? Procedure, Basis Basis)
{
    /// <summary>An extractable nutrient counted as the element.</summary>
    /// <param name="extractant">Extractant.</param>
    /// <param name="detection">Detection, if the laboratory said.</param>
    public static Method Extracted(Extractant extractant, Detection? detection = null) => new(extractant, detection, null, Basis.Element);

    /// <summary>A value that needs a procedure instead of an extractant.</summary>
    /// <param name="procedure">Procedure, if the laboratory said.</param>
    public static Method By(Procedure? procedure) => new(null, null, procedure, Basis.Element);
}
