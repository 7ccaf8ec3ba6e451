using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Materials;

/// <summary>One published figure of a material.</summary>
/// <param name="Property">Kebab-case property, for example total-nitrogen.</param>
/// <param name="Value">The planning figure; null where only a range is printed.</param>
/// <param name="Low">Low end; null for none.</param>
/// <param name="High">High end; null for none.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Note">Remark; null for none.</param>
public sealed record MaterialValue(string Property, decimal? Value, decimal? Low, decimal? High, string Unit, Citation Source, string? Note);
