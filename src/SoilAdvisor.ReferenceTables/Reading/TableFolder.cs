using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables.Kinds;

namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>The whole folder as written: documents and rows, before their meaning is built. The checks look at this.</summary>
internal sealed class TableFolder
{
    public required IReadOnlyList<Table> Tables { get; init; }

    public required IReadOnlyList<Document<GuideDocument>> Guides { get; init; }

    public required IReadOnlyList<Document<RateTableDocument>> RateTables { get; init; }

    public required IReadOnlyList<Document<LimeMethodDocument>> LimeMethods { get; init; }

    public required IReadOnlyList<Document<IReadOnlyList<Source>>> SourceLists { get; init; }

    /// <summary>Paths of files that could not be read. What they hold is not missing, only unknown.</summary>
    public required IReadOnlyCollection<string> Unread { get; init; }

    /// <summary>Every document that cites a source and carries dates.</summary>
    public IEnumerable<(Document File, ITableHead Head)> Heads =>
    [
        .. Guides.Select(d => ((Document)d, (ITableHead)d.Value)),
        .. RateTables.Select(d => ((Document)d, (ITableHead)d.Value)),
        .. LimeMethods.Select(d => ((Document)d, (ITableHead)d.Value)),
        .. Tables.Select(t => ((Document)t.Document, (ITableHead)t.Document.Value)),
    ];

    /// <summary>Every source with the place where it is described, for example <c>[3]</c>.</summary>
    public IEnumerable<(Document File, string Place, Source Source)> Sources => SourceLists.SelectMany(
        list => list.Value.Select((source, i) => ((Document)list, string.Create(CultureInfo.InvariantCulture, $"[{i}]"), source)));

    public IEnumerable<Table> TablesOf(RowKind kind) => Tables.Where(t => t.Kind == kind);

    public IEnumerable<TableRow> RowsOf(RowKind kind) => TablesOf(kind).SelectMany(t => t.Rows);

    /// <summary>The table of a kind in one folder; null when the folder has none.</summary>
    public Table? TableIn(string folder, RowKind kind) => Tables.FirstOrDefault(t => t.Kind == kind && t.Folder == folder);

    public IReadOnlyList<TableRow> RowsIn(string folder, RowKind kind) => TableIn(folder, kind)?.Rows ?? [];

    /// <summary>The ids that a kind of table defines.</summary>
    public HashSet<string> IdsOf(RowKind kind) => [.. RowsOf(kind).Select(r => r["id"]).OfType<string>(), .. TablesOf(kind).SelectMany(t => t.IdsOfBrokenRows)];

    /// <summary>True when a table of the kind could not be read, so that its ids are not known.</summary>
    public bool IsUnread(RowKind kind) => Unread.Any(path => kind.LivesIn(TableText.FolderOf(path)) && Path.GetFileNameWithoutExtension(path) == kind.FileName);

    /// <summary>True when a file with this name could not be read, for example guide.json.</summary>
    public bool IsUnread(string fileName) => Unread.Any(path => Path.GetFileName(path) == fileName);
}
