namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>What a carbon to nitrogen ratio is read for.</summary>
public enum CarbonRatioUse
{
    /// <summary>Below it nitrogen is released.</summary>
    NetRelease,

    /// <summary>Above it nitrogen is tied up.</summary>
    TieUp,

    /// <summary>Our class for a material of which nothing else is known.</summary>
    PredictedShare,
}
