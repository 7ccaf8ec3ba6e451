namespace SoilAdvisor.Agronomy.Materials;

/// <summary>What the organic standard says of a material. Default is the strictest.</summary>
public enum OrganicStatus
{
    /// <summary>Never in an organic plan.</summary>
    Prohibited,

    /// <summary>Only under its condition, with the record to keep.</summary>
    Restricted,

    /// <summary>Allowed.</summary>
    Allowed,
}
