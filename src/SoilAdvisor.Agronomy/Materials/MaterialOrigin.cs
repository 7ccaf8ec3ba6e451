namespace SoilAdvisor.Agronomy.Materials;

/// <summary>Where a farm has a material from.</summary>
public enum MaterialOrigin
{
    /// <summary>From a dealer, or not said.</summary>
    Bought,

    /// <summary>From nearby, such as a neighbour's manure.</summary>
    Local,

    /// <summary>Made on the farm, such as its own compost.</summary>
    Own,
}
