namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>
/// Where a class stands, in our words. It drives display and safety stops and never looks up a rate: the guide's own class does that.
/// </summary>
public enum Standing
{
    /// <summary>A reference range that is not a rating. Default.</summary>
    Information,

    /// <summary>Below where the guide wants it.</summary>
    Below,

    /// <summary>Where the guide wants it.</summary>
    Target,

    /// <summary>Above where the guide wants it.</summary>
    Above,

    /// <summary>So high that none should be added from any source.</summary>
    Stop,
}
