namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>What a guide says about how the extract was read.</summary>
public enum ScaleDetection
{
    /// <summary>The guide does not print it; readings of either kind are taken and the assumption is said. Default.</summary>
    NotStated,

    /// <summary>It makes no difference for this analyte.</summary>
    Any,

    /// <summary>Plasma only.</summary>
    Icp,

    /// <summary>Colour reaction only.</summary>
    Colorimetric,
}
