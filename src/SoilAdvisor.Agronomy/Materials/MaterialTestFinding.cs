using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Materials;

/// <summary>What a laboratory test of a material means for spreading it, beside its nutrients.</summary>
/// <param name="Material">The material.</param>
/// <param name="Subject">What was tested, for example "Cu" or "salt".</param>
/// <param name="Found">The result in words with its unit.</param>
/// <param name="Text">What it means, in plain sentences.</param>
/// <param name="Forbids">True when the material is above a ceiling and is never planned.</param>
/// <param name="Source">Where the limit stands.</param>
public sealed record MaterialTestFinding(Material Material, string Subject, string Found, string Text, bool Forbids, Citation Source);
