namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>What a row on uptake says.</summary>
public enum UptakeKind
{
    /// <summary>Days after planting in which a crop takes little up.</summary>
    SlowStart,

    /// <summary>Part of the uptake that falls in the last days before harvest.</summary>
    LastDays,

    /// <summary>A line of nitrogen in the crop on days after planting.</summary>
    Line,

    /// <summary>Uptake a day when it is fastest.</summary>
    PeakRate,
}
