using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>What a trial or review found about steering cations toward set ratios, in our words.</summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Text">The finding in one or two plain sentences.</param>
/// <param name="Source">Where it stands.</param>
public sealed record RatioTrial(string Id, string Text, Citation Source);
