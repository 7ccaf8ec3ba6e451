using CsvHelper;
using FluentValidation;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.LabFiles;

/// <summary>
/// Reads a lab file: one row a sample, one column a result. Each cell then passes the same gates as JSON. Faults name line and column;
/// what is faulty is left out, the rest stands.
/// </summary>
internal static class LabFileReader
{
    private static readonly SoilTestValidator Validator = new();

    /// <summary>The samples that could be read; faults go to the list.</summary>
    public static IReadOnlyList<WrittenSoilTest> Read(string text, FaultList faults)
    {
        if (Split(text, faults) is not [var header, .. var rows])
        {
            return [];
        }

        var columns = header.Cells.Select((cell, i) => LabHeader.Read(cell, Place(header.Line, i), faults)).ToList();

        // A name that fell apart shifts every column after it: nothing below it can be read.
        var apart = faults.All.Any(f => f.Code == LabHeader.NotQuoted);
        if (!HasId(columns, header, faults) | HasTwice(columns, header, faults) || apart)
        {
            return [];
        }

        if (rows.Length == 0)
        {
            faults.Add(Place(header.Line, 0), "no-samples", "The file has a header and no samples.", "Add one line for each sample.");
        }
        else if (rows.Length > Limits.SoilTests)
        {
            faults.Add(Place(rows[Limits.SoilTests].Line, 0), "too-many", string.Create(CultureInfo.InvariantCulture, $"There are {rows.Length} samples; one file may hold {Limits.SoilTests}."), "Send several files.");
            return [];
        }

        var tests = new List<WrittenSoilTest>(rows.Length);
        foreach (var row in rows)
        {
            if (ReadRow(row, columns, tests, faults) is { } test)
            {
                tests.Add(test);
            }
        }

        return tests;
    }

    private static List<LabRow>? SplitRows(string text, FaultList faults)
    {
        var rows = new List<LabRow>();
        try
        {
            using var reader = CsvReader.FromText(text, new CsvReaderOptions { HasHeader = false, TrackLineNumbers = true, MalformedData = CsvMalformedDataHandling.Throw });
            while (reader.Read())
            {
                var cells = new string[reader.FieldCount];
                for (var i = 0; i < cells.Length; i++)
                {
                    cells[i] = reader.GetString(i);
                }

                if (cells.Any(c => !string.IsNullOrWhiteSpace(c)))
                {
                    rows.Add(new LabRow((int)reader.LineNumber, cells));
                }
            }
        }
        catch (CsvFormatException broken)
        {
            faults.Add(Place(rows.Count > 0 ? rows[^1].Line + 1 : 1, 0), "malformed-csv", $"The file cannot be split into cells: {broken.Message}", "Look for a quotation mark that is not closed.");
            return null;
        }

        return rows;
    }

    private static LabRow[] Split(string text, FaultList faults)
    {
        var firstLine = text.AsSpan()[..(text.AsSpan().IndexOfAny('\r', '\n') is var end and >= 0 ? end : text.Length)];
        foreach (var (separator, name) in new[] { (';', "semicolons"), ('\t', "tabs") })
        {
            if (firstLine.Contains(separator))
            {
                faults.Add("line 1", "column-separator", $"The columns are separated by {name}.", "Save the file as comma-separated (CSV, UTF-8), with decimal points.");
                return [];
            }
        }

        if (SplitRows(text, faults) is not { } rows)
        {
            return [];
        }

        if (rows.Count == 0)
        {
            faults.Add("line 1", "empty-file", "The file holds nothing.", "Send a header line and one line for each sample.");
        }

        return [.. rows];
    }

    private static bool HasId(List<LabColumn> columns, LabRow header, FaultList faults)
    {
        if (columns.Exists(c => c is LabColumn.About { Name: "id" }))
        {
            return true;
        }

        faults.Add(Place(header.Line, 0), "id-missing", "There is no column id.", "Add a column id with a name of your own for each sample.");
        return false;
    }

    private static bool HasTwice(List<LabColumn> columns, LabRow header, FaultList faults)
    {
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var found = false;
        for (var i = 0; i < columns.Count; i++)
        {
            var name = columns[i] switch
            {
                LabColumn.About about => about.Name,
                LabColumn.Measured measured => measured.Reading.Analyte!,
                LabColumn.Recommended recommended => "recommended " + recommended.Recommendation.What,
                _ => null,
            };
            if (name is not null && !seen.Add(name))
            {
                faults.Add(Place(header.Line, i), "duplicate-column", $"{name} stands in two columns.", "Keep the column of the method that your guide uses.");
                found = true;
            }
        }

        return found;
    }

    private static WrittenSoilTest? ReadRow(LabRow row, List<LabColumn> columns, List<WrittenSoilTest> before, FaultList faults)
    {
        if (row.Cells.Count != columns.Count)
        {
            faults.Add(Place(row.Line, 0), "row-length", string.Create(CultureInfo.InvariantCulture, $"Line {row.Line} has {row.Cells.Count} cells; the header has {columns.Count}."), "Look for a missing comma, or for a decimal comma that splits a number in two.");
            return null;
        }

        var found = new FaultList();
        var draft = LabRowDraft.Of(row, columns, found);
        foreach (var failure in Validator.Validate(draft.Test).Errors)
        {
            found.Add(PointerPath.FromProperty(failure.PropertyName), failure.ErrorCode, failure.ErrorMessage, (string)failure.CustomState);
        }

        var read = SoilTestReader.Read(draft.Test, "", found);
        foreach (var fault in found.All)
        {
            faults.Add(fault with { Pointer = Place(row.Line, draft.ColumnOf(fault.Pointer)) });
        }

        if (read is null)
        {
            return null;
        }

        if (before.Exists(t => t.Id!.Trim().Equals(read.Id, StringComparison.Ordinal)))
        {
            faults.Add(Place(row.Line, draft.ColumnOf("/id")), "duplicate-soil-test", $"The sample {Rules.Clip(read.Id)} stands twice in the file.", "Give each sample its own id.");
            return null;
        }

        return SoilTestWriter.Write(read, draft.Test, draft.Recommendations(found));
    }

    private static string Place(int line, int column) => string.Create(CultureInfo.InvariantCulture, $"line {line}, column {column + 1}");
}
