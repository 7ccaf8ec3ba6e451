namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>How manure reaches the soil: it decides how much of its ammonium is kept.</summary>
public enum SpreadingWay
{
    /// <summary>Left on the surface.</summary>
    NotIncorporated,

    /// <summary>Spread on the surface and worked in some days later.</summary>
    Incorporated,

    /// <summary>Put into the soil at once.</summary>
    Injected,

    /// <summary>Liquid manure left on residue or a cover crop.</summary>
    OntoResidue,
}
