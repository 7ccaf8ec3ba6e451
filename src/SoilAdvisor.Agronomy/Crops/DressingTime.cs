namespace SoilAdvisor.Agronomy.Crops;

/// <summary>When a part of a rate is given.</summary>
public enum DressingTime
{
    /// <summary>Before or at planting.</summary>
    Base,

    /// <summary>Beside the growing crop.</summary>
    Sidedress,

    /// <summary>In portions through the season; no time is printed.</summary>
    ThroughSeason,
}
