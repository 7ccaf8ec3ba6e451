namespace SoilAdvisor.Agronomy.Cations;

/// <summary>Counted in a volume of soil, as laboratories do that scoop instead of weigh: meq/100 cm3.</summary>
public readonly struct PerVolume : ISoilBasis
{
    /// <inheritdoc/>
    public static string Unit => "meq/100cm3";
}
