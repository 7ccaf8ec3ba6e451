using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>The key of a table names columns that it has.</summary>
internal sealed class KeysDeclaredCheck : ITableCheck
{
    public string Code => "keys-declared";

    public IEnumerable<TableProblem> Check(TableFolder folder) => folder.Tables.SelectMany(Faults);

    private IEnumerable<TableProblem> Faults(Table table)
    {
        var document = table.Document.Value;
        return document.Keys.Count == 0
            ? [table.Document.At("keys", Code, "No key is named. Name the columns whose combination is written once only.")]
            : document.Keys.Where(key => !document.Columns.ContainsKey(key)).Select(key => table.Document.At("keys", Code, $"The key \"{key}\" is not a column."));
    }
}
