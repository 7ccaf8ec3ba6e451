using SoilAdvisor.ReferenceTables.Kinds;

namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>A CSV table with the document beside it.</summary>
internal sealed class Table
{
    private readonly Dictionary<string, int> indices;

    public Table(string path, RowKind kind, Document<TableDocument> document, IReadOnlyList<(int Line, string[] Cells)> records)
    {
        (Path, Kind, Document) = (path, kind, document);
        indices = document.Value.Columns.Keys.Select((name, i) => (name, i)).ToDictionary(c => c.name, c => c.i, StringComparer.Ordinal);
        Rows = [.. records.Where(IsWhole).Select(r => new TableRow(this, r.Line, r.Cells))];
        IdsOfBrokenRows = IndexOf("id") == 0 ? [.. records.Where(r => !IsWhole(r)).Select(r => r.Cells[0])] : [];
    }

    /// <summary>Path of the CSV file below the folder of tables.</summary>
    public string Path { get; }

    public RowKind Kind { get; }

    public Document<TableDocument> Document { get; }

    public IReadOnlyList<TableRow> Rows { get; }

    /// <summary>Ids of rows with a cell too many or too few: the row is refused, but what names it is not wrong.</summary>
    public IReadOnlyList<string> IdsOfBrokenRows { get; }

    public string Folder => Document.Folder;

    public int IndexOf(string column) => indices.GetValueOrDefault(column, -1);

    private bool IsWhole((int Line, string[] Cells) record) => record.Cells.Length == indices.Count;
}
