using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.Materials;

/// <summary>The conductivity of a material with the extract it was read in; without the extract it means nothing.</summary>
/// <param name="Reading">Electrical conductivity.</param>
/// <param name="Extract">saturated-paste, 1:2 or 1:5 (material to water); as the laboratory reports it.</param>
public sealed record TestedSalt(Conductivity Reading, string Extract);
