using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>A published or computed range of mass on ground. The ends are kept; no mean is made of them.</summary>
/// <param name="Low">Low end.</param>
/// <param name="High">High end.</param>
/// <param name="Basis">What it rests on, in words.</param>
/// <param name="Source">Where it stands.</param>
public sealed record CoverCropRange(MassPerArea Low, MassPerArea High, string Basis, Citation Source);
