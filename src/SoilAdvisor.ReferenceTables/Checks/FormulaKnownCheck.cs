using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>The formula of a lime method or of an index of stone is in the catalogue.</summary>
internal sealed class FormulaKnownCheck : ITableCheck
{
    public string Code => "formula-known";

    public IEnumerable<TableProblem> Check(TableFolder folder)
    {
        var known = Formulas.All.Select(f => f.Id).ToHashSet(StringComparer.Ordinal);
        string Say(string formula, string advice)
        {
            var near = NearestNames.Of(formula, known);
            return $"There is no formula \"{formula}\" in the catalogue.{(near.Count > 0 ? $" Did you mean {string.Join(" or ", near)}?" : "")} {advice}";
        }

        return
        [
            .. from document in folder.LimeMethods
               where document.Value.Formula is { Length: > 0 } formula && !known.Contains(formula)
               select document.At("formula", Code, Say(document.Value.Formula!, "A method by a new equation needs code; a printed table of cells does not.")),
            .. from row in folder.RowsOf(RowKinds.LimeIndexes)
               where row["formula"] is { } formula && !known.Contains(formula)
               select row.At("formula", Code, Say(row["formula"]!, "An index by a new rule needs code.")),
        ];
    }
}
