using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>Limits of the guide in the unit of a projection.</summary>
/// <param name="TargetFrom">Where the target begins; null for open or none.</param>
/// <param name="TargetTo">Where it ends; null for open or none.</param>
/// <param name="Stop">From where on nothing is added; null where the guide names no such limit.</param>
internal sealed record OutlookLimits(SoilConcentration? TargetFrom, SoilConcentration? TargetTo, SoilConcentration? Stop);
