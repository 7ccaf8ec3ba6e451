namespace SoilAdvisor.Agronomy.Plans;

/// <summary>Stones for a requirement.</summary>
/// <param name="Choices">Those that qualify, best first.</param>
/// <param name="Excluded">Those that do not, each with its reason.</param>
public sealed record LimeSelection(IReadOnlyList<LimeChoice> Choices, IReadOnlyList<LimeExclusion> Excluded);
