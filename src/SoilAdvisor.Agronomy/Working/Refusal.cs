namespace SoilAdvisor.Agronomy.Working;

/// <summary>Why there is no answer, and what would settle it.</summary>
/// <param name="Code">Stable kebab-case code, catalogued in docs/api.md.</param>
/// <param name="Message">What was received and why it cannot be used, with limits and units.</param>
/// <param name="Suggestion">What to do about it.</param>
public sealed record Refusal(string Code, string Message, string Suggestion);
