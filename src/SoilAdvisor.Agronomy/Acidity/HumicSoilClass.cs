namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Soil class by humic matter, as the North Carolina laboratory prints it. It does not follow from organic matter per cent.</summary>
public enum HumicSoilClass
{
    /// <summary>MIN, mineral.</summary>
    Mineral,

    /// <summary>M-O, mineral-organic.</summary>
    MineralOrganic,

    /// <summary>ORG, organic.</summary>
    Organic,
}
