using System.Text.Json.Nodes;

namespace SoilAdvisor.Cli.Files;

/// <summary>
/// Reads the cells of one row into members of a request and notes where each came from. Numbers and dates are passed on as they are
/// written: the service judges them, in the same words for every caller.
/// </summary>
/// <param name="sheet">The list.</param>
/// <param name="row">The row.</param>
/// <param name="pointer">JSON Pointer to the entry that the row becomes.</param>
/// <param name="places">Where parts of the request came from.</param>
/// <param name="complaints">What is wrong.</param>
internal sealed class Cells(Sheet sheet, SheetRow row, string pointer, Places places, List<Complaint> complaints)
{
    /// <summary>Text of a cell; null when it is empty.</summary>
    public JsonNode? Text(string member, Column column)
    {
        Note(member, column);
        return Filled(sheet.Cell(row, column));
    }

    /// <summary>A value with the unit of its heading; null when the cell is empty.</summary>
    public JsonNode? Measure(string member, Column column) => Measure(member, column, sheet.Cell(row, column));

    /// <summary>One entry of a cell with the unit of its heading; null when it is empty.</summary>
    public JsonNode? Measure(string member, Column column, string entry)
    {
        Note(member, column);
        if (entry.Length == 0 || sheet.HeadingOf(column) is not { } heading)
        {
            return null;
        }

        places.Note($"{pointer}/{member}/unit", $"{sheet.File}, heading \"{heading.Text}\"");
        return new JsonObject { ["value"] = entry, ["unit"] = heading.Unit };
    }

    /// <summary>One entry of a cell; null when it is empty.</summary>
    public JsonNode? Entry(string member, Column column, string entry)
    {
        Note(member, column);
        return Filled(entry);
    }

    /// <summary>Unit of a column's heading; null when the file does not have the column.</summary>
    public string? UnitOf(Column column) => sheet.HeadingOf(column)?.Unit;

    /// <summary>The entries of a cell between semicolons.</summary>
    public IReadOnlyList<string> List(Column column)
    {
        var cell = sheet.Cell(row, column);
        return cell.Length == 0 ? [] : cell.Split(';', StringSplitOptions.TrimEntries);
    }

    /// <summary>The entries of a cell between semicolons, one for each of another column; empty entries for an empty cell.</summary>
    public IReadOnlyList<string> ListBeside(Column column, Column first, int count)
    {
        var entries = List(column);
        if (entries.Count > 0 && entries.Count != count)
        {
            complaints.Add(new(
                Where(column),
                $"This cell has {Counted(entries.Count)}, and \"{first.Name}\" has {count}.",
                "Write one for each, with a semicolon between them, and leave a place empty where you do not know it."));
        }

        return entries.Count == count ? entries : [.. Enumerable.Repeat("", count)];
    }

    private static string Counted(int entries) => entries == 1 ? "1 entry" : $"{entries} entries";

    private static JsonNode? Filled(string text) => text.Length == 0 ? null : JsonValue.Create(text);

    private void Note(string member, Column column) => places.Note($"{pointer}/{member}", Where(column));

    private string Where(Column column)
    {
        var line = $"{sheet.File} line {row.Line}";
        return sheet.HeadingOf(column) is { } heading ? $"{line}, column \"{heading.Text}\"" : line;
    }
}
