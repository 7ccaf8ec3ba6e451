namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>What a published change of a soil test is used for. The table says it, not the program.</summary>
public enum MovementUse
{
    /// <summary>Said in words, never calculated with. Default.</summary>
    Information,

    /// <summary>Pounds that move the test by one unit.</summary>
    Projection,

    /// <summary>Share by which the test falls in a year without any spread.</summary>
    Drawdown,
}
