namespace SoilAdvisor.Reports;

/// <summary>Units a report is written in. Limits on a ruler and printed rates keep the unit of their guide wherever they are quoted.</summary>
public enum ReportUnits
{
    /// <summary>Pounds, ounces, acres, square feet, cups. Default.</summary>
    Us,

    /// <summary>Kilograms, grams, hectares, square metres, litres.</summary>
    Metric,
}
