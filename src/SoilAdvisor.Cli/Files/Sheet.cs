using CsvHelper;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Cli.Files;

/// <summary>A CSV list with known columns. Lines that begin with # are remarks; empty lines are passed over.</summary>
internal sealed class Sheet
{
    private readonly Dictionary<string, (int Index, Heading Heading)> columns;

    private Sheet(string file, Dictionary<string, (int Index, Heading Heading)> columns, IReadOnlyList<SheetRow> rows) =>
        (File, this.columns, Rows) = (file, columns, rows);

    /// <summary>Name of the file.</summary>
    public string File { get; }

    /// <summary>Its rows without the heading.</summary>
    public IReadOnlyList<SheetRow> Rows { get; }

    /// <summary>Heading of a column as written; null when the file does not have it.</summary>
    public Heading? HeadingOf(Column column) => columns.TryGetValue(column.Name, out var found) ? found.Heading : null;

    /// <summary>Text of a cell; empty when it is empty or the file has no such column.</summary>
    public string Cell(SheetRow row, Column column) => columns.TryGetValue(column.Name, out var found) ? row.Cells[found.Index] : "";

    /// <summary>Reads a list; null when its shape cannot be read. All faults are among the complaints.</summary>
    public static Sheet? Read(InputFile file, IReadOnlyList<Column> known, List<Complaint> complaints)
    {
        if (file.Text(complaints) is not { } text || Records(file.Name, text, complaints) is not { } records)
        {
            return null;
        }

        if (records.Count < 2)
        {
            complaints.Add(new(file.Name, records.Count == 0 ? "The file holds no heading and no rows." : "The file holds a heading but no rows.", "Write one heading line and one line for each entry."));
            return null;
        }

        if (Separator(records[0].Cells) is { } separator)
        {
            complaints.Add(new(
                $"{file.Name} line {records[0].Line}",
                $"The columns are separated by {separator}.",
                "Save the file as \"CSV UTF-8 (comma separated)\" with decimal points: columns end with a comma, and 2.5 is written with a point. Semicolons separate several entries inside one cell."));
            return null;
        }

        var before = complaints.Count;
        var headings = Headings(file.Name, records[0], known, complaints);
        var rows = records.Skip(1).ToList();
        foreach (var row in rows.Where(r => r.Cells.Count != records[0].Cells.Count))
        {
            complaints.Add(new(
                $"{file.Name} line {row.Line}",
                $"The row has {row.Cells.Count} cells and the heading has {records[0].Cells.Count}.",
                "Write one cell for each heading. A cell that holds a comma needs double quotes around it; a decimal is written with a point (2.5)."));
        }

        return complaints.Count == before ? new Sheet(file.Name, headings, rows) : null;
    }

    private static List<SheetRow>? Records(string file, string text, List<Complaint> complaints)
    {
        var options = new CsvReaderOptions
        {
            Separator = ',',
            HasHeader = false,
            CommentPrefix = '#',
            TrackLineNumbers = true,
            TrimWhitespace = true,
            MalformedData = CsvMalformedDataHandling.Throw,
        };
        var records = new List<SheetRow>();
        using var reader = CsvReader.FromText(text, options);
        try
        {
            while (reader.Read())
            {
                var cells = Enumerable.Range(0, reader.FieldCount).Select(i => reader.GetString(i).Trim()).ToList();
                if (cells.Any(c => c.Length > 0))
                {
                    records.Add(new SheetRow(reader.LineNumber, cells));
                }
            }
        }
        catch (CsvFormatException fault)
        {
            complaints.Add(new($"{file} line {fault.LineNumber}", "A double quote stands where none belongs, or is never closed.", "Put a cell that holds a comma between two double quotes, and write a double quote inside it twice."));
            return null;
        }

        return records;
    }

    private static Dictionary<string, (int Index, Heading Heading)> Headings(string file, SheetRow row, IReadOnlyList<Column> known, List<Complaint> complaints)
    {
        var found = new Dictionary<string, (int, Heading)>(StringComparer.Ordinal);
        var meant = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < row.Cells.Count; i++)
        {
            var heading = Heading.Of(row.Cells[i]);
            var where = $"{file} line {row.Line}, column {i + 1} \"{heading.Text}\"";
            if (known.FirstOrDefault(c => c.Name == heading.Name) is not { } column)
            {
                var near = NearestNames.Of(heading.Name, known.Select(c => c.Name));
                meant.UnionWith(near);
                complaints.Add(new(where, "This column is not known.", Offer([.. known.Where(c => near.Contains(c.Name))], known)));
            }
            else if (!found.TryAdd(column.Name, (i, heading)))
            {
                complaints.Add(new(where, "This column stands twice.", "Leave one of them out."));
            }
            else if (UnitFault(heading, column) is { } fault)
            {
                complaints.Add(new(where, fault, $"Write for example \"{column.Example}\"."));
            }
        }

        foreach (var missing in known.Where(c => c.Required && !found.ContainsKey(c.Name) && !meant.Contains(c.Name)))
        {
            complaints.Add(new($"{file} line {row.Line}", $"The column \"{missing.Name}\" is missing.", $"Add a column with the heading \"{missing.Example}\"."));
        }

        return found;
    }

    private static string? UnitFault(Heading heading, Column column) => (column.ExampleUnit, heading.Unit) switch
    {
        (null, { } unit) => $"This column has no unit, and \"{unit}\" is written as one.",
        ({ }, null) => "The unit is missing, and it is never guessed.",
        _ => null,
    };

    private static string Offer(IReadOnlyList<Column> near, IReadOnlyList<Column> known) => near.Count > 0
        ? $"Did you mean {string.Join(" or ", near.Select(Quoted))}?"
        : $"Known columns are {string.Join(", ", known.Select(Quoted))}.";

    private static string Quoted(Column column) => $"\"{column.Example}\"";

    private static string? Separator(IReadOnlyList<string> heading) =>
        heading.Count > 1 ? null
        : heading[0].Contains(';', StringComparison.Ordinal) ? "semicolons"
        : heading[0].Contains('\t', StringComparison.Ordinal) ? "tabs"
        : null;
}
