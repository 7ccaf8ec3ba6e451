namespace SoilAdvisor.Agronomy.Acidity.Sulfur;

/// <summary>Texture as sulfur tables tell it apart.</summary>
public enum SulfurSoil
{
    /// <summary>Sand.</summary>
    Sand,

    /// <summary>Loam.</summary>
    Loam,

    /// <summary>Clay.</summary>
    Clay,
}
