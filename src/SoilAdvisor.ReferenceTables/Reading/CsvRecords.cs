using CsvHelper;

namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>Splits a CSV file into records, by RFC 4180 without repairs, keeping the line of each.</summary>
internal static class CsvRecords
{
    public const string ShapeCode = "csv-shape";

    private static readonly CsvReaderOptions Options = new()
    {
        Separator = ',',
        HasHeader = false,
        SkipEmptyLines = false,
        TrackLineNumbers = true,
        MalformedData = CsvMalformedDataHandling.Throw,
        MaxRecordSize = 1 << 20,
    };

    /// <summary>Every record with its line; null after a fault of quoting was added to <paramref name="problems"/>.</summary>
    public static IReadOnlyList<(int Line, string[] Cells)>? Read(TableText text, List<TableProblem> problems)
    {
        var records = new List<(int, string[])>();
        try
        {
            using var reader = CsvReader.Create(text.Bytes, Options);
            while (reader.Read())
            {
                var cells = new string[reader.FieldCount];
                for (var i = 0; i < cells.Length; i++)
                {
                    cells[i] = reader.GetString(i);
                }
                records.Add(((int)reader.LineNumber, cells));
            }
            return records;
        }
        catch (CsvFormatException fault)
        {
            problems.Add(new TableProblem(text.Path, Math.Max(1, (int)fault.LineNumber), null, ShapeCode, "A quote is opened or closed in the wrong place. Quote the whole cell and double the quotes inside it."));
            return null;
        }
    }
}
