using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>One published figure of a crop, for example its target pH.</summary>
/// <param name="Property">Kebab-case property, for example target-ph.</param>
/// <param name="Value">The figure; null where only a range is printed.</param>
/// <param name="Low">Low end; null where one figure is printed.</param>
/// <param name="High">High end; null where one figure is printed.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Note">Remark; null for none.</param>
public sealed record CropValue(string Property, decimal? Value, decimal? Low, decimal? High, string Unit, Citation Source, string? Note);
