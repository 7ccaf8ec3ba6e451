namespace SoilAdvisor.Agronomy.Materials.Metals;

/// <summary>Heavy metals that rules on composts, manures and fertilisers limit, by their chemical symbols.</summary>
public enum Metal
{
    /// <summary>Arsenic.</summary>
    As,

    /// <summary>Cadmium.</summary>
    Cd,

    /// <summary>Cobalt.</summary>
    Co,

    /// <summary>Chromium.</summary>
    Cr,

    /// <summary>Copper.</summary>
    Cu,

    /// <summary>Mercury.</summary>
    Hg,

    /// <summary>Molybdenum.</summary>
    Mo,

    /// <summary>Nickel.</summary>
    Ni,

    /// <summary>Lead.</summary>
    Pb,

    /// <summary>Selenium.</summary>
    Se,

    /// <summary>Zinc.</summary>
    Zn,
}
