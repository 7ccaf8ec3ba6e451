using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.MethodConversions;

/// <summary>A straight line between two methods, with how well it fits.</summary>
/// <param name="Slope">Slope; above zero.</param>
/// <param name="Intercept">Intercept, in the unit.</param>
/// <param name="Unit">Unit of reading, intercept and result.</param>
/// <param name="Lower">Lowest reading that the line covers, inclusive; null where none is printed.</param>
/// <param name="Upper">Highest reading that the line covers, inclusive; null where none is printed.</param>
/// <param name="RSquared">Share of the variance that it explains; null where it was not printed or not read.</param>
/// <param name="Error">One standard error of the result: percent of it, or pH units for pH. Above zero.</param>
/// <param name="ErrorIsOurs">True where the publication prints no error and this one is our widening.</param>
public sealed record ConversionLine(
    decimal Slope,
    decimal Intercept,
    ReportingUnit Unit,
    decimal? Lower,
    decimal? Upper,
    decimal? RSquared,
    decimal Error,
    bool ErrorIsOurs);
