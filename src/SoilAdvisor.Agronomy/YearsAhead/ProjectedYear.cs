using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>A soil test as it is expected to read after some seasons; four times in five between the two ends.</summary>
/// <param name="Year">Seasons from now; 0 is the soil test itself, with what was spread since.</param>
/// <param name="Low">Low end, mg/kg.</param>
/// <param name="Likely">The projection, mg/kg.</param>
/// <param name="High">High end, mg/kg.</param>
public sealed record ProjectedYear(int Year, SoilConcentration Low, SoilConcentration Likely, SoilConcentration High);
