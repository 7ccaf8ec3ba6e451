using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Formulas;

/// <summary>What an equation comes to, with its line of working.</summary>
internal sealed record FormulaAnswer(
    string Formula,
    FormulaResultAnswer Result,
    IReadOnlyList<VariedAnswer>? Varied,
    IReadOnlyList<WorkingLineAnswer> Working,
    IReadOnlyList<AssumptionAnswer> Assumptions,
    IReadOnlyList<SourceAnswer> Sources,
    Versions Versions);
