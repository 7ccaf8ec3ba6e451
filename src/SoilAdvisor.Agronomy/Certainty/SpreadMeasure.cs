namespace SoilAdvisor.Agronomy.Certainty;

/// <summary>How a spread was printed.</summary>
public enum SpreadMeasure
{
    /// <summary>In percent of the value. Default.</summary>
    CoefficientOfVariation,

    /// <summary>As a standard deviation in the analyte's own unit.</summary>
    StandardDeviation,

    /// <summary>As a change from one time to another, in the analyte's own unit.</summary>
    Change,
}
