namespace SoilAdvisor.Agronomy.Certification;

/// <summary>Outcome of a check.</summary>
public enum FindingState
{
    /// <summary>A record that would decide it is missing. Default: missing records never pass.</summary>
    NotDecidable,

    /// <summary>Something has to be done.</summary>
    Act,

    /// <summary>Met, on the records given.</summary>
    Pass,
}
