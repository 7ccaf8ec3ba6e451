using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>An extreme that a publication calls worth attention. It sets no rate.</summary>
/// <param name="Code">Stable kebab-case code.</param>
/// <param name="Text">What was found, against which printed limit.</param>
/// <param name="Source">Where the limit stands.</param>
public sealed record CationWarning(string Code, string Text, Citation Source);
