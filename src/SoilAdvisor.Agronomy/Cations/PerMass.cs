namespace SoilAdvisor.Agronomy.Cations;

/// <summary>Counted in a mass of dry soil: meq/100 g, the same number as cmol of charge per kg.</summary>
public readonly struct PerMass : ISoilBasis
{
    /// <inheritdoc/>
    public static string Unit => "meq/100g";
}
