namespace SoilAdvisor.Agronomy.Sampling;

/// <summary>Where a bed lies.</summary>
public enum GrowingSite
{
    /// <summary>In the open. Default.</summary>
    Field,

    /// <summary>Under a high tunnel: no rain washes salts down, and amendments are heavier.</summary>
    HighTunnel,
}
