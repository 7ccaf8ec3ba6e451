using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Materials;

/// <summary>A short warning printed where the reader acts.</summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Text">One or two plain sentences.</param>
/// <param name="Source">Where it stands.</param>
public sealed record Caution(string Id, string Text, Citation Source);
