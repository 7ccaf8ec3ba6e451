namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>How much a doubt about a report weighs.</summary>
public enum Severity
{
    /// <summary>Likely a mix-up, but it can be true: the user is warned and everything is computed. Default.</summary>
    Suspicion,

    /// <summary>It cannot be: the reading is refused.</summary>
    Impossible,
}
