using System.Text.Json;
using SoilAdvisor.Cli.Connections;
using Spectre.Console;

namespace SoilAdvisor.Cli.Screens;

/// <summary>Parts that several screens share. Everything that came from a file or the service is written as it is, never read as styling.</summary>
internal static class Sheets
{
    /// <summary>A heading with a blank line before it.</summary>
    public static void Heading(this IAnsiConsole screen, string words)
    {
        screen.WriteLine();
        screen.Write(new Text(words, new Style(decoration: Decoration.Bold)));
        screen.WriteLine();
    }

    /// <summary>A table of plain cells. The first column names the row and is never broken; the screen's width breaks the others.</summary>
    public static Table Table(params IReadOnlyList<string> headings)
    {
        var table = new Table().Border(TableBorder.Simple).Collapse();
        for (var i = 0; i < headings.Count; i++)
        {
            var column = new TableColumn(new Text(headings[i], new Style(decoration: Decoration.Bold))).Padding(0, 2);
            table.AddColumn(i == 0 ? column.NoWrap() : column);
        }

        return table;
    }

    /// <summary>A row of plain cells.</summary>
    public static void Row(this Table table, params IReadOnlyList<string?> cells) => table.AddRow(cells.Select(c => new Text(c ?? "")));

    /// <summary>Lines with a dash before each.</summary>
    public static void List(this IAnsiConsole screen, IEnumerable<string?> lines)
    {
        foreach (var line in lines.Where(l => !string.IsNullOrEmpty(l)))
        {
            var grid = new Grid().AddColumn(new GridColumn().Width(1).PadLeft(2).PadRight(1)).AddColumn();
            grid.AddRow(new Text("-"), new Text(line!));
            screen.Write(grid);
        }
    }

    /// <summary>What has no answer, and what to do about it.</summary>
    public static void Refused(this IAnsiConsole screen, IEnumerable<JsonElement> refused) =>
        screen.List(refused.Select(r => $"No answer: {r.Text("message")} {r.Text("suggestion")}"));

    /// <summary>Assumptions and sources, which end every result.</summary>
    public static void Foot(this IAnsiConsole screen, params IReadOnlyList<JsonElement> answers)
    {
        var assumptions = answers.SelectMany(a => a.Each("assumptions")).DistinctBy(a => a.Text("text")).ToList();
        if (assumptions.Count > 0)
        {
            screen.Heading("Taken as true, because nobody said otherwise");
            screen.List(assumptions.Select(a => $"{a.Text("text")} [{Cited(a)}]"));
        }

        screen.Heading("Sources");
        screen.List(answers.SelectMany(a => a.Each("sources")).DistinctBy(s => s.Text("id")).OrderBy(s => s.Text("id"), StringComparer.Ordinal).Select(Source));
        var versions = answers[0].At("versions");
        screen.WriteLine();
        screen.Paragraph($"Tables {versions.Text("tables")}, calculation {versions.Text("engine")}.");
    }

    /// <summary>A paragraph that the screen's width breaks.</summary>
    public static void Paragraph(this IAnsiConsole screen, string words)
    {
        screen.Write(new Text(words));
        screen.WriteLine();
    }

    /// <summary>Source id, place in it, and how the value came to us.</summary>
    public static string Cited(JsonElement part) => string.Join(", ", new[] { part.Text("source"), part.Text("locator"), EvidenceOf(part.Text("evidence")) }.Where(t => t is not null));

    /// <summary>A number with its unit.</summary>
    public static string? Measure(JsonElement quantity) => quantity.ValueKind != JsonValueKind.Object
        ? null
        : $"{quantity.Text("value")} {quantity.Text("unit")}".Trim();

    private static string Source(JsonElement source)
    {
        var made = string.Join(", ", new[] { source.Text("authors"), source.Text("title"), source.Text("publisher"), source.Text("edition"), source.Text("year") }.Where(t => t is not null));
        return $"[{source.Text("id")}] {made}. {source.Text("link")}".TrimEnd();
    }

    /// <summary>Source id and how the value came to us, for a narrow column.</summary>
    public static string CitedShort(JsonElement part) => string.Join(", ", new[] { part.Text("source"), EvidenceOf(part.Text("evidence")) }.Where(t => t is not null));

    /// <summary>An analyte or nutrient as people write it.</summary>
    public static string Analyte(string? id) => id switch
    {
        "organicMatter" => "organic matter",
        "bufferPh" => "buffer pH",
        "cec" => "CEC",
        "ec" => "EC",
        null => "",
        _ => id,
    };

    // "seen" goes without saying; everything weaker is said beside the value.
    private static string? EvidenceOf(string? evidence) => evidence switch
    {
        null or "seen" => null,
        "from-memory" => "from memory",
        "common-practice" => "common practice",
        "ours" => "our reading",
        _ => evidence,
    };
}
