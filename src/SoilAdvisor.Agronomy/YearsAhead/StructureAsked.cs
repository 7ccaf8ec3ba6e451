using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>Compost wanted for the structure of a bed, whatever its nutrients.</summary>
/// <param name="Material">Id of the material.</param>
/// <param name="Rate">Wanted rate as spread; null where a depth is given.</param>
/// <param name="Depth">Wanted depth of the layer; null where a rate is given.</param>
public sealed record StructureAsked(string Material, MassPerArea? Rate, Length? Depth);
