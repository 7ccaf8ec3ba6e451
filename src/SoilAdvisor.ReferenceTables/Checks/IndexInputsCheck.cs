using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables.Guides;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>An index names one formula of the catalogue, and one reading in the formula's own unit for each of its symbols.</summary>
internal sealed class IndexInputsCheck : ITableCheck
{
    public string Code => "index-inputs";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
        folder.TablesOf(RowKinds.Indices).SelectMany(table => IndexRows.Of(folder, table.Folder).Values).SelectMany(Faults);

    private IEnumerable<TableProblem> Faults(IndexRows index)
    {
        foreach (var row in index.Rows.Where(r => r["formula"] != index.Rows[0]["formula"] || r["about"] != index.Rows[0]["about"]))
        {
            yield return row.At("formula", Code, $"The rows of {index.Id} name different formulas or nutrients. Write the same in all.");
        }
        if (index.Formula is not { } formula)
        {
            var near = NearestNames.Of(index.Rows[0]["formula"] ?? "", Formulas.All.Select(f => f.Id));
            yield return index.Rows[0].At("formula", Code, $"There is no formula \"{index.Rows[0]["formula"]}\" in the catalogue.{(near.Count > 0 ? $" Did you mean {string.Join(" or ", near)}?" : "")} A new index needs code.");
            yield break;
        }
        foreach (var row in index.Rows)
        {
            var symbol = formula.Inputs.FirstOrDefault(s => s.Name == row["symbol"]);
            if (symbol is null)
            {
                yield return row.At("symbol", Code, $"\"{row["symbol"]}\" is not a symbol of {formula.Id}. Its symbols: {string.Join(", ", formula.Inputs.Select(s => s.Name))}.");
            }
            else if (symbol.Unit != row["unit"])
            {
                yield return row.At("unit", Code, $"The formula takes {symbol.Name} in {symbol.Unit}, not {row["unit"]}.");
            }
            if (row["analyte"] != "pH" && row["extractant"] is null)
            {
                yield return row.At("extractant", Code, $"The extractant of {row["analyte"]} is missing.");
            }
        }
        var missing = formula.Inputs.Select(s => s.Name).Except(index.Rows.Select(r => r["symbol"]).OfType<string>()).ToList();
        if (missing.Count > 0)
        {
            yield return index.Rows[0].At("symbol", Code, $"{index.Id} lacks a row for {string.Join(", ", missing)}.");
        }
        if (index.Rows.All(r => r["analyte"] != index.Rows[0]["about"]))
        {
            yield return index.Rows[0].At("about", Code, $"{index.Id} speaks of {index.Rows[0]["about"]}, which is none of its readings.");
        }
    }
}
