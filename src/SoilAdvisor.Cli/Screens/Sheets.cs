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

    /// <summary>A table of plain cells; the screen's width breaks long ones.</summary>
    public static Table Table(params IReadOnlyList<string> headings)
    {
        var table = new Table().Border(TableBorder.Simple).Collapse();
        foreach (var heading in headings)
        {
            table.AddColumn(new TableColumn(new Text(heading, new Style(decoration: Decoration.Bold))));
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

    /// <summary>Assumptions and sources, which end every answer.</summary>
    public static void Foot(this IAnsiConsole screen, JsonElement answer)
    {
        var assumptions = answer.Each("assumptions").ToList();
        if (assumptions.Count > 0)
        {
            screen.Heading("Taken as true, because nobody said otherwise");
            screen.List(assumptions.Select(a => $"{a.Text("text")} [{Cited(a)}]"));
        }

        screen.Heading("Sources");
        screen.List(answer.Each("sources").Select(Source));
        var versions = answer.At("versions");
        screen.WriteLine();
        screen.Write(new Text($"Tables {versions.Text("tables")}, calculation {versions.Text("engine")}."));
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
