namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>What winter does to a stand in this gap. Default is <see cref="NoWinter"/>.</summary>
public enum WinterFate
{
    /// <summary>No winter lies in its growing time, or frost-tender and ended before frost.</summary>
    NoWinter,

    /// <summary>The first frosts kill it.</summary>
    DiesOfFrost,

    /// <summary>Winter usually kills it.</summary>
    DiesInWinter,

    /// <summary>It may live or die: its hardiness and the farm's winter lie too close, or one of them is not known.</summary>
    Uncertain,

    /// <summary>It usually lives and grows on in spring.</summary>
    Lives,
}
