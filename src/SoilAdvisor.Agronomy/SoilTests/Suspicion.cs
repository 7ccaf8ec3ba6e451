using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>A likely mix-up in a report, named before it does harm.</summary>
/// <param name="Code">Stable kebab-case code.</param>
/// <param name="Severity">Whether it warns or refuses.</param>
/// <param name="Readings">The readings in doubt, the first one first; each keeps its place in the report.</param>
/// <param name="Message">What was found, against which limit, with units.</param>
/// <param name="Suggestion">What to look at.</param>
/// <param name="Source">Where the limit stands; ours where it is ours.</param>
public sealed record Suspicion(string Code, Severity Severity, IReadOnlyList<Reading> Readings, string Message, string Suggestion, Citation Source);
