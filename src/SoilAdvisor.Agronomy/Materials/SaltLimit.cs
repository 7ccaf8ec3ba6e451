using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Materials;

/// <summary>The conductivity of a material above which its salts can harm, in one extract.</summary>
/// <param name="Extract">saturated-paste, 1:2 or 1:5 (material to water).</param>
/// <param name="Above">Conductivity.</param>
/// <param name="Source">Where it stands.</param>
public sealed record SaltLimit(string Extract, Conductivity Above, Citation Source);
