using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>The formula of a lime method is in the catalogue.</summary>
internal sealed class FormulaKnownCheck : ITableCheck
{
    public string Code => "formula-known";

    public IEnumerable<TableProblem> Check(TableFolder folder)
    {
        var known = Formulas.All.Select(f => f.Id).ToHashSet(StringComparer.Ordinal);
        return from document in folder.LimeMethods
               where document.Value.Formula is { Length: > 0 } formula && !known.Contains(formula)
               let near = NearestNames.Of(document.Value.Formula!, known)
               select document.At("formula", Code, $"There is no formula \"{document.Value.Formula}\" in the catalogue.{(near.Count > 0 ? $" Did you mean {string.Join(" or ", near)}?" : "")} A method by a new equation needs code; a printed table of cells does not.");
    }
}
