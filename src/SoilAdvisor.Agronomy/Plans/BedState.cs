namespace SoilAdvisor.Agronomy.Plans;

/// <summary>How far a bed could be planned.</summary>
public enum BedState
{
    /// <summary>Not at all. Default.</summary>
    Refused,

    /// <summary>Some nutrients are refused; the rest stands.</summary>
    Partly,

    /// <summary>Whole.</summary>
    Planned,
}
