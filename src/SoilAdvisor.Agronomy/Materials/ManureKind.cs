namespace SoilAdvisor.Agronomy.Materials;

/// <summary>Whether a material holds manure, and how it was treated.</summary>
public enum ManureKind
{
    /// <summary>No manure.</summary>
    None,

    /// <summary>Raw: 120 or 90 days to first harvest. Also anything without treatment records.</summary>
    Raw,

    /// <summary>Composted to the rule; needs its records.</summary>
    Composted,

    /// <summary>Heat-processed to the rule; needs its records.</summary>
    Processed,
}
