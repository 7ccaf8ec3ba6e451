using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>The combination of the key columns is written once only; so is every id.</summary>
internal sealed class KeyUniqueCheck : ITableCheck
{
    public string Code => "key-unique";

    public IEnumerable<TableProblem> Check(TableFolder folder) => folder.Tables.SelectMany(Faults);

    private IEnumerable<TableProblem> Faults(Table table)
    {
        // An id is unique whatever else the document calls its key.
        var keys = table.IndexOf("id") >= 0 ? ["id"] : table.Document.Value.Keys;
        return table.Rows
            .GroupBy(row => string.Join('\n', keys.Select(key => row[key])), StringComparer.Ordinal)
            .SelectMany(group => group.Skip(1).Select(row => row.At(
                keys[0],
                Code,
                string.Create(CultureInfo.InvariantCulture, $"{string.Join(", ", keys.Where(k => row[k] is not null).Select(k => $"{k} \"{row[k]}\""))} is already written on line {group.First().Line}."))));
    }
}
