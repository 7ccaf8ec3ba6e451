using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Formulas;

/// <summary>Numbers for an equation, in the units of its symbols.</summary>
internal sealed record FormulaRequest
{
    public IReadOnlyDictionary<string, WrittenNumber>? Inputs { get; init; }
}
