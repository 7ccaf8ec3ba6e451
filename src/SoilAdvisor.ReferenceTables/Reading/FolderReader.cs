using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables.Kinds;

namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>Reads every file of the folder and stops at nothing: a file that cannot be read is a problem, and the next one follows.</summary>
internal sealed class FolderReader
{
    public const string FileKnownCode = "file-known";
    public const string FilePairedCode = "file-paired";
    public const string FilePresentCode = "file-present";
    public const string HeaderCode = "csv-header";
    public const string CellCountCode = "csv-cells";

    private readonly List<TableProblem> problems = [];
    private readonly HashSet<string> unread = new(StringComparer.Ordinal);
    private readonly Dictionary<string, TableText> csv;
    private readonly List<TableText> json;
    private readonly List<Table> tables = [];
    private readonly List<Document<GuideDocument>> guides = [];
    private readonly List<Document<RateTableDocument>> rateTables = [];
    private readonly List<Document<LimeMethodDocument>> limeMethods = [];
    private readonly List<Document<IReadOnlyList<Source>>> sources = [];

    private FolderReader(IReadOnlyList<TableText> texts)
    {
        var readable = new List<TableText>();
        foreach (var text in texts)
        {
            if (text.EncodingFault() is { } fault)
            {
                Refuse(text, fault);
            }
            else
            {
                readable.Add(text);
            }
        }
        csv = readable.Where(t => t.IsCsv).ToDictionary(t => t.Path, StringComparer.Ordinal);
        json = [.. readable.Where(t => !t.IsCsv)];
    }

    /// <summary>Codes of the faults that only reading can find.</summary>
    public static IReadOnlyList<string> Codes { get; } =
        [JsonDocuments.ShapeCode, CsvRecords.ShapeCode, TableText.EncodingCode, FileKnownCode, FilePairedCode, FilePresentCode, HeaderCode, CellCountCode];

    public static (TableFolder Folder, List<TableProblem> Problems) Read(IReadOnlyList<TableText> texts) => new FolderReader(texts).Read();

    private (TableFolder, List<TableProblem>) Read()
    {
        foreach (var text in json)
        {
            Read(text);
        }
        foreach (var alone in csv.Values.Where(t => !json.Any(d => d.Path == t.Path[..^4] + ".json") && !unread.Contains(t.Path[..^4] + ".json")))
        {
            problems.Add(new TableProblem(alone.Path, 1, null, FilePairedCode, $"The table has no document. Write {alone.Name}.json beside it."));
        }
        RequirePresence();
        var folder = new TableFolder { Tables = tables, Guides = guides, RateTables = rateTables, LimeMethods = limeMethods, SourceLists = sources, Unread = unread };
        return (folder, problems);
    }

    private void Read(TableText text)
    {
        switch (text.Name)
        {
            case "sources":
                Keep(sources, text);
                break;
            case "guide" when Lies(text, "guides/"):
                Keep(guides, text);
                break;
            case "rate-table" when Lies(text, "rate-tables/"):
                Keep(rateTables, text);
                break;
            case "method" when Lies(text, "lime-methods/"):
                Keep(limeMethods, text);
                break;
            default:
                ReadTable(text);
                break;
        }
    }

    private static bool Lies(TableText text, string under) =>
        text.Folder.StartsWith(under, StringComparison.Ordinal) && !text.Folder[under.Length..].Contains('/');

    private void Keep<T>(List<Document<T>> into, TableText text)
        where T : class
    {
        if (JsonDocuments.Read<T>(text, problems) is { } document)
        {
            into.Add(document);
        }
        else
        {
            unread.Add(text.Path);
        }
    }

    private void ReadTable(TableText text)
    {
        if (RowKinds.All.FirstOrDefault(k => k.FileName == text.Name && k.LivesIn(text.Folder)) is not { } kind)
        {
            Refuse(text, new TableProblem(text.Path, 1, null, FileKnownCode, $"No kind of table is kept here under this name. Known: {string.Join(", ", RowKinds.All.Select(k => $"{k.Home}/{k.FileName}"))}."));
            return;
        }
        if (JsonDocuments.Read<TableDocument>(text, problems) is not { } document)
        {
            unread.Add(text.Path);
            return;
        }
        var path = text.Path[..^5] + ".csv";
        if (!csv.TryGetValue(path, out var rows))
        {
            if (unread.Add(path))
            {
                problems.Add(new TableProblem(text.Path, 1, null, FilePairedCode, $"The document has no table. Write {text.Name}.csv beside it."));
            }
        }
        else if (CsvRecords.Read(rows, problems) is { Count: > 0 } records && HeaderFits(rows, records[0].Cells, document.Value.Columns.Keys))
        {
            var data = records.Skip(1).ToList();
            ReportCounts(rows, data, document.Value.Columns.Count);
            tables.Add(new Table(path, kind, document, data));
        }
        else
        {
            unread.Add(path);
        }
    }

    private bool HeaderFits(TableText text, string[] header, IReadOnlyCollection<string> declared)
    {
        if (header.SequenceEqual(declared, StringComparer.Ordinal))
        {
            return true;
        }
        problems.Add(new TableProblem(text.Path, 1, null, HeaderCode, $"The header is \"{string.Join(',', header)}\"; the document declares \"{string.Join(',', declared)}\". They must be the same, in the same order."));
        return false;
    }

    private void ReportCounts(TableText text, IEnumerable<(int Line, string[] Cells)> records, int columns) =>
        problems.AddRange(records.Where(r => r.Cells.Length != columns).Select(r => new TableProblem(
            text.Path,
            r.Line,
            null,
            CellCountCode,
            string.Create(CultureInfo.InvariantCulture, $"The row has {r.Cells.Length} cells; the header has {columns}. Quote a cell that holds a comma, and leave no line empty."))));

    private void RequirePresence()
    {
        foreach (var kind in RowKinds.All.Where(k => k.Presence == Presence.Required && !k.Home.Contains('*')))
        {
            Require($"{kind.Home}/{kind.FileName}.json");
        }
        foreach (var folder in csv.Keys.Concat(json.Select(t => t.Path)).Concat(unread).Select(TableText.FolderOf).Distinct().Order(StringComparer.Ordinal).ToList())
        {
            if (RowKinds.Ratings.LivesIn(folder))
            {
                Require($"{folder}/guide.json");
                Require($"{folder}/ratings.json");
            }
            else if (RowKinds.Rates.LivesIn(folder))
            {
                Require($"{folder}/rate-table.json");
            }
            else if (RowKinds.LimeCells.LivesIn(folder))
            {
                Require($"{folder}/method.json");
            }
        }
    }

    private void Require(string path)
    {
        if (!json.Any(t => t.Path == path) && unread.Add(path))
        {
            problems.Add(new TableProblem(path, 1, null, FilePresentCode, "The file is missing. The folder cannot be used without it."));
        }
    }

    private void Refuse(TableText text, TableProblem problem)
    {
        unread.Add(text.Path);
        problems.Add(problem);
    }
}
