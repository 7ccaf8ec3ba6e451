using System.Text;
using CsvHelper;

namespace SoilAdvisor.Reports.Tests;

/// <summary>Reads rows back with a library of its own, strictly.</summary>
internal static class Csv
{
    public static IReadOnlyList<IReadOnlyList<string>> Read(string text)
    {
        var rows = new List<IReadOnlyList<string>>();
        using var reader = CsvReader.Create(Encoding.UTF8.GetBytes(text), new CsvReaderOptions { Separator = ',', HasHeader = false, SkipEmptyLines = false, MalformedData = CsvMalformedDataHandling.Throw });
        while (reader.Read())
        {
            rows.Add([.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetString)]);
        }

        return rows;
    }
}
