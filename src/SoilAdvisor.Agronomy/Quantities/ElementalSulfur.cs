namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>Elemental sulfur spread to lower pH. It is not the sulfur that a crop needs, and is never balanced against it.</summary>
public readonly struct ElementalSulfur : IForm
{
    /// <inheritdoc/>
    public static string Symbol => "elemental S";
}
