namespace SoilAdvisor.Agronomy.Certification;

/// <summary>Whether a rule asks that hot days follow each other without a gap.</summary>
public enum DaysInARow
{
    /// <summary>The rule says neither. An unbroken run meets it; scattered days are for the certifier. Default.</summary>
    NotStated,

    /// <summary>They must follow each other.</summary>
    Asked,

    /// <summary>They need not.</summary>
    NotAsked,
}
