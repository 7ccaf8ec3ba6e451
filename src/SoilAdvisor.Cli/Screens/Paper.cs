using System.Text.Json;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Files;
using Spectre.Console;

namespace SoilAdvisor.Cli.Screens;

/// <summary>
/// What a result is drawn on. It remembers which sources were named, so that exactly those are listed at the end. Everything that came
/// from a file or the service is written as it is, never read as styling.
/// </summary>
/// <param name="console">The terminal or a text.</param>
/// <param name="places">Where the parts of the request came from.</param>
internal sealed class Paper(IAnsiConsole console, Places places)
{
    private readonly HashSet<string> named = new(StringComparer.Ordinal);

    /// <summary>Where the parts of the request came from.</summary>
    public Places Places => places;

    /// <summary>Puts a table of plain cells down; the screen's width breaks them. Without rows there is none; a column without any content is left out.</summary>
    /// <param name="headings">What the columns hold.</param>
    /// <param name="rows">One cell a heading.</param>
    /// <param name="firstIsWhole">Whether the first column is never broken, as an id must not be.</param>
    public void Put(IReadOnlyList<string> headings, IReadOnlyList<IReadOnlyList<string?>> rows, bool firstIsWhole = true)
    {
        if (rows.Count == 0)
        {
            return;
        }

        var filled = Enumerable.Range(0, headings.Count).Where(i => rows.Any(r => !string.IsNullOrEmpty(r[i]))).ToList();
        var table = new Table().Border(TableBorder.Simple).Collapse();
        foreach (var i in filled)
        {
            var column = new TableColumn(new Text(headings[i], new Style(decoration: Decoration.Bold))).PadLeft(0).PadRight(1);
            table.AddColumn(i == 0 && firstIsWhole ? column.NoWrap() : column);
        }

        foreach (var row in rows)
        {
            table.AddRow(filled.Select(i => new Text(Wrapped.Visible(row[i] ?? ""))));
        }

        console.Write(table);
    }

    /// <summary>Puts aligned columns down.</summary>
    public void Put(Grid grid) => console.Write(grid);

    /// <summary>A heading with a blank line before it.</summary>
    public void Heading(string words)
    {
        console.WriteLine();
        Write(Wrapped.Text(words, Width), strong: true);
    }

    /// <summary>A paragraph that the screen's width breaks.</summary>
    public void Paragraph(string words) => Write(Wrapped.Text(words, Width));

    /// <summary>A paragraph that stands further in.</summary>
    public void Indented(string words, int columns, bool strong = false) => Write(Wrapped.Text(words, Width, new string(' ', columns)), strong);

    /// <summary>An empty line.</summary>
    public void Blank() => console.WriteLine();

    /// <summary>Lines with a dash before each; empty ones are left out.</summary>
    public void List(IEnumerable<string?> lines)
    {
        foreach (var line in lines.Where(l => !string.IsNullOrEmpty(l)))
        {
            Write(Wrapped.Text(line!, Width, "  - "));
        }
    }

    /// <summary>What has no answer, and what to do about it.</summary>
    public void Refused(IEnumerable<JsonElement> refused) => List(refused.Select(r => $"No answer: {r.Text("message")} {r.Text("suggestion")}"));

    /// <summary>Likely mix-ups in a soil test, said before its numbers.</summary>
    public void Suspicions(IEnumerable<JsonElement> suspicions) =>
        List(suspicions.Select(s => $"Look at this first, {places.Of(s.Text("pointer") ?? "")}: {s.Text("message")} {s.Text("suggestion")} [{CitedShort(s)}]"));

    /// <summary>Source, place in it, and how the value came to us.</summary>
    public string Cited(JsonElement part) => Joined(Named(part), part.Text("locator"), EvidenceOf(part));

    /// <summary>Source and how the value came to us, for a narrow place.</summary>
    public string CitedShort(JsonElement part) => Joined(Named(part), EvidenceOf(part));

    /// <summary>Names every source of an answer of which everything is shown.</summary>
    public void NameAll(JsonElement answer) => named.UnionWith(answer.Each("sources").Select(s => s.Text("id") ?? ""));

    /// <summary>Assumptions and the sources that were named, which end every result.</summary>
    /// <param name="assumptions">Each with whom it concerns; empty for everybody.</param>
    /// <param name="answers">Answers of the service.</param>
    public void Foot(IEnumerable<(JsonElement Assumption, string Concerns)> assumptions, params IReadOnlyList<JsonElement> answers)
    {
        var lines = assumptions.Select(a => $"{a.Concerns}{a.Assumption.Text("text")} [{CitedShort(a.Assumption)}]").ToList();
        if (lines.Count > 0)
        {
            Heading("Taken as true, because nobody said otherwise");
            List(lines);
        }

        Heading("Sources");
        List(answers
            .SelectMany(a => a.Each("sources"))
            .DistinctBy(s => s.Text("id"))
            .Where(s => named.Contains(s.Text("id") ?? ""))
            .OrderBy(s => s.Text("id"), StringComparer.Ordinal)
            .Select(Source));
        var versions = answers[0].At("versions");
        Blank();
        Paragraph($"Tables {versions.Text("tables")}, calculation {versions.Text("engine")}.");
    }

    /// <summary>The same for answers whose assumptions concern everybody.</summary>
    public void Foot(params IReadOnlyList<JsonElement> answers) =>
        Foot(answers.SelectMany(a => a.Each("assumptions")).DistinctBy(a => a.Text("text")).Select(a => (a, "")), answers);

    /// <summary>Columns of the screen.</summary>
    public int Width => console.Profile.Width;

    // The lines are broken already, so the library must not break them again: text is written past it wherever it has no style.
    private void Write(string lines, bool strong = false)
    {
        if (strong)
        {
            console.Write(new Text(lines, new Style(decoration: Decoration.Bold)));
            console.WriteLine();
        }
        else
        {
            console.Profile.Out.Writer.WriteLine(lines);
        }
    }

    private static string Joined(params IReadOnlyList<string?> parts) => string.Join(", ", parts.Where(p => p is not null));

    private static string Source(JsonElement source)
    {
        var made = Joined(source.Text("authors"), source.Text("title"), source.Text("publisher"), source.Text("edition"), source.Text("year"));
        return $"[{source.Text("id")}] {made}. {source.Text("link")}".TrimEnd();
    }

    // "seen" goes without saying; everything weaker is said beside the value.
    private static string? EvidenceOf(JsonElement part) => part.Text("evidence") switch
    {
        null or "seen" => null,
        "from-memory" => "from memory",
        "common-practice" => part.Text("source") == "common-practice" ? null : "common practice",
        "ours" => "ours",
        var other => other,
    };

    private string? Named(JsonElement part)
    {
        var id = part.Text("source");
        if (id is not null)
        {
            named.Add(id);
        }

        return id;
    }
}
