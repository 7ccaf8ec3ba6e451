using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>One printed cell: the part of the ammonium nitrogen that is kept.</summary>
/// <param name="Retention">Id of the publication's table.</param>
/// <param name="How">How the manure reached the soil.</param>
/// <param name="WithinDays">Worked in within so many days; null where it is not worked in.</param>
/// <param name="Weather">Weather of the column.</param>
/// <param name="Kept">The part kept.</param>
/// <param name="Source">Where it stands.</param>
public sealed record AmmoniumKept(string Retention, SpreadingWay How, int? WithinDays, SpreadingWeather Weather, ShareOf<AmmoniumN> Kept, Citation Source);
