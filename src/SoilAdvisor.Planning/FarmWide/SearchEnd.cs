namespace SoilAdvisor.Planning.FarmWide;

/// <summary>Why a search for the best plan stopped.</summary>
internal enum SearchEnd
{
    /// <summary>It came as near to the proven bound as was asked.</summary>
    Proven,

    /// <summary>It had tried as many branches as were allowed: the same request ends at the same plan.</summary>
    Branches,

    /// <summary>The time was up. On a faster machine the plan may be better.</summary>
    Time,
}
