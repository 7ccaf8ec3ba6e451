namespace SoilAdvisor.Api.Http;

/// <summary>One thing that is wrong or cannot be answered: where, which, in words, and what to do.</summary>
/// <param name="Pointer">JSON Pointer into the request; line and column for a lab file; the parameter's name in the query.</param>
/// <param name="Code">Permanent kebab-case code, catalogued in docs/api.md.</param>
/// <param name="Message">What was received, the limit, the unit.</param>
/// <param name="Suggestion">What to do.</param>
internal sealed record Fault(string Pointer, string Code, string Message, string Suggestion)
{
    /// <summary>A refusal of the calculation, at its place in the request.</summary>
    public static Fault Of(string pointer, Refusal refusal) => new(pointer, refusal.Code, refusal.Message, refusal.Suggestion);
}
