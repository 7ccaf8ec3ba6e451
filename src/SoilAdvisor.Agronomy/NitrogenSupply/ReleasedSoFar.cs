using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>What one unit of mass of a material has released by a day.</summary>
/// <param name="Low">Low end.</param>
/// <param name="High">High end; not below the low end.</param>
/// <param name="How">How that is known, in words.</param>
/// <param name="Source">Where it stands.</param>
public sealed record ReleasedSoFar(MassShare Low, MassShare High, string How, Citation Source);
