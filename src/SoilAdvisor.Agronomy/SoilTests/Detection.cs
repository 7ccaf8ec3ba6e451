namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>How the extract was read. For phosphorus the two are different tests; for cations they agree.</summary>
public enum Detection
{
    /// <summary>Inductively coupled plasma: counts organic phosphorus too.</summary>
    Icp,

    /// <summary>Colour reaction: counts orthophosphate only.</summary>
    Colorimetric,
}
