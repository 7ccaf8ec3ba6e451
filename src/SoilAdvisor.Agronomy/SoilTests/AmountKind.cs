namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>What kind of statement a laboratory makes.</summary>
public enum AmountKind
{
    /// <summary>Nothing was reported. Default.</summary>
    Missing,

    /// <summary>A number.</summary>
    Measured,

    /// <summary>Less than a number, as below detection.</summary>
    Below,

    /// <summary>More than a number, as above the instrument's range.</summary>
    Above,
}
