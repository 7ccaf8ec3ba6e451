using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Formulas;

/// <summary>Numbers for an equation, in the units of its symbols.</summary>
internal sealed record FormulaRequest
{
    public IReadOnlyDictionary<string, WrittenNumber>? Inputs { get; init; }

    /// <summary>A symbol to vary while all others stay; null for none.</summary>
    public WrittenVariation? Vary { get; init; }
}
