namespace SoilAdvisor.Agronomy.CoverCrops.Seasons;

/// <summary>What is done to a bed in a season of cover crops.</summary>
public enum SeasonWork
{
    /// <summary>Sow the cover crop.</summary>
    Sow,

    /// <summary>Mow it at flowering.</summary>
    Mow,

    /// <summary>End it.</summary>
    Kill,

    /// <summary>Plant the next crop.</summary>
    Plant,
}
