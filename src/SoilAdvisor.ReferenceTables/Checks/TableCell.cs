using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>One cell with what the document and the kind say of its column.</summary>
/// <param name="Row">Its row.</param>
/// <param name="Column">Its column.</param>
/// <param name="Text">What is written; null when it is empty.</param>
/// <param name="Declared">What the document declares.</param>
/// <param name="Kind">What the kind of table asks; null for a column that the kind does not have.</param>
internal sealed record TableCell(TableRow Row, string Column, string? Text, ColumnSpecification Declared, KindColumn? Kind)
{
    public TableProblem Fault(string code, string words) => Row.At(Column, code, words);

    /// <summary>Every cell of the folder.</summary>
    public static IEnumerable<TableCell> Of(TableFolder folder) =>
        from table in folder.Tables
        from column in table.Document.Value.Columns
        let kind = table.Kind.Columns.FirstOrDefault(c => c.Name == column.Key)
        from row in table.Rows
        select new TableCell(row, column.Key, row[column.Key], column.Value, kind);
}
