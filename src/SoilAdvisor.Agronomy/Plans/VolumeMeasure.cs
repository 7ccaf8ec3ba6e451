using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>An amount by volume, only where a density is published.</summary>
/// <param name="Value">How many.</param>
/// <param name="Unit">cup, pint, gal, cubic-foot or cubic-yard.</param>
/// <param name="Source">Where the density stands.</param>
public sealed record VolumeMeasure(double Value, string Unit, Citation Source);
