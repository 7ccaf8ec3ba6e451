using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Formulas;

/// <summary>An equation with its symbols.</summary>
internal sealed record FormulaEntry(string Id, string Title, string Shown, IReadOnlyList<SymbolEntry> Inputs, SeriesEntry? Series, SymbolEntry Result, CitedAs By) : Sourced(By)
{
    public static FormulaEntry Of(IFormula formula, Bibliography bibliography) => new(
        formula.Id, formula.Title, formula.Shown, [.. formula.Inputs.Select(SymbolEntry.Of)], SeriesEntry.Of(formula), SymbolEntry.Of(formula.Result), bibliography.Cite(formula.Source));
}
