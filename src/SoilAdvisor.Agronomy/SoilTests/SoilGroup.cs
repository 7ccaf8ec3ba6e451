namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>Texture group of the sampled layer, as guides use it.</summary>
public enum SoilGroup
{
    /// <summary>Sand.</summary>
    Sand,

    /// <summary>Loamy sand.</summary>
    LoamySand,

    /// <summary>Sandy loam.</summary>
    SandyLoam,

    /// <summary>Loam.</summary>
    Loam,

    /// <summary>Silt loam.</summary>
    SiltLoam,

    /// <summary>Clay loam.</summary>
    ClayLoam,

    /// <summary>Clay.</summary>
    Clay,

    /// <summary>Organic soil: muck or peat.</summary>
    Organic,
}
