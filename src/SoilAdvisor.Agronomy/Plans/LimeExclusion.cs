using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>A material that does not meet a lime requirement here, and why.</summary>
/// <param name="Material">The material; its cautions say what is dangerous in it.</param>
/// <param name="Reason">Why not, in plain sentences.</param>
/// <param name="Source">Where that stands.</param>
public sealed record LimeExclusion(Material Material, string Reason, Citation Source);
