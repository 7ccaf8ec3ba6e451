using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>One printed point of a release with time.</summary>
/// <param name="Course">Id of the course.</param>
/// <param name="Material">The material; null for all that the course was made with.</param>
/// <param name="Days">Days since it was mixed with soil.</param>
/// <param name="Temperature">Soil temperature, °C; null over all temperatures.</param>
/// <param name="Low">Low end.</param>
/// <param name="High">High end.</param>
/// <param name="Source">Where it stands.</param>
public sealed record ReleasePoint(string Course, string? Material, int Days, decimal? Temperature, ShareOf<OrganicN> Low, ShareOf<OrganicN> High, Citation Source);
