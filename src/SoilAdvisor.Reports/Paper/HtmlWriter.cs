using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Unicode;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Rulers;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Paper;

/// <summary>Writes blocks as HTML. Every text passes through <see cref="Encode"/>, no attribute or anchor is made from user text.</summary>
internal sealed class HtmlWriter(SourceList sources)
{
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    private const int LongestAmount = 18;

    private readonly StringBuilder html = new();
    private bool rulersAreExplained;

    public string Write(ReportPaper paper)
    {
        html.Append("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        html.Append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">\n");
        html.Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        html.Append(CultureInfo.InvariantCulture, $"<title>{Encode(paper.Title)}</title>\n<style>\n{Stylesheet.Text}</style>\n</head>\n<body>\n<main>\n");
        foreach (var block in paper.Blocks)
        {
            Write(block);
        }

        Sources();
        return html.Append("</main>\n</body>\n</html>\n").ToString();
    }

    private static string Encode(string text) => Encoder.Encode(SafeText.Of(text));

    private void Write(Block block)
    {
        switch (block)
        {
            case Heading heading:
                html.Append(CultureInfo.InvariantCulture, $"<h{heading.Level}{(heading.Anchor is { } anchor ? $" id=\"{anchor}\"" : "")}>{Encode(heading.Text)}</h{heading.Level}>\n");
                break;
            case Paragraph paragraph:
                html.Append(CultureInfo.InvariantCulture, $"<p{(paragraph.IsLead ? " class=\"lead\"" : "")}>{Said(paragraph)}</p>\n");
                break;
            case Bullets bullets:
                html.Append("<ul>\n");
                foreach (var entry in bullets.Entries)
                {
                    html.Append(CultureInfo.InvariantCulture, $"<li>{Said(entry)}</li>\n");
                }

                html.Append("</ul>\n");
                break;
            case SourcedTable table:
                Table(table);
                break;
            case RatingTable ratings:
                Ratings(ratings);
                break;
            case ComparisonTable comparison:
                Comparison(comparison);
                break;
            case WorkingBlock working:
                html.Append(CultureInfo.InvariantCulture, $"<pre>{Board(working)}</pre>\n");
                break;
            case Fold fold:
                html.Append(CultureInfo.InvariantCulture, $"<details>\n<summary>{Encode(fold.Title)}</summary>\n");
                foreach (var inside in fold.Blocks)
                {
                    Write(inside);
                }

                html.Append("</details>\n");
                break;
            case Contents contents:
                html.Append("<nav aria-label=\"In this report\">");
                html.AppendJoin(" ", contents.Entries.Select(e => $"<a href=\"#{e.Anchor}\">{Encode(e.Text)}</a>"));
                html.Append("</nav>\n");
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(block), block.GetType().Name, "Not a block that this writer knows.");
        }
    }

    private void ExplainRulers()
    {
        if (rulersAreExplained)
        {
            return;
        }

        rulersAreExplained = true;
        html.Append("<ul>\n");
        foreach (var words in RulerWords.HowToRead)
        {
            html.Append(CultureInfo.InvariantCulture, $"<li>{Encode(words)}</li>\n");
        }

        html.Append("</ul>\n");
    }

    private void Ratings(RatingTable table)
    {
        ExplainRulers();
        Head("ratings", RatingRows.Columns);
        html.Append("<tbody>\n");
        foreach (var line in table.Lines)
        {
            var ruler = Ruler.Of(line.Rating, line.Whisker);
            html.Append("<tr>");
            Column(RatingRows.Columns[0], $"<strong>{Encode(TradeWords.Of(line.Rating.Analyte))}</strong>");
            Column(RatingRows.Columns[1], Lines(RatingRows.Result(line)));
            Column(RatingRows.Columns[2], Verdict(line));
            html.Append(CultureInfo.InvariantCulture, $"<td class=\"scale\">{RulerDrawing.Whole(line.Rating, line.Whisker, RulerWords.Spoken(line), Encode)}{Small(ruler, line.Rating)}</td>");
            Column(SourcedTable.SourceColumn, string.Concat(line.Sources.Select(Mark)));
            html.Append("</tr>\n");
        }

        html.Append("</tbody>\n</table>\n");
    }

    // All results on one scale stand under its ruler, and the limits run down through them.
    private void Comparison(ComparisonTable table)
    {
        ExplainRulers();
        Head("ratings", ["Soil test", .. RatingRows.Columns.Skip(1)]);
        foreach (var lines in table.Scales)
        {
            var first = lines[0].Rating;
            var ruler = Ruler.Of([.. lines.Select(l => (l.Rating, l.Whisker))]);
            html.Append(CultureInfo.InvariantCulture, $"<tbody>\n<tr class=\"scale-head\"><th scope=\"rowgroup\" colspan=\"3\">{Encode(TradeWords.Of(first.Analyte))}</th>");
            html.Append(CultureInfo.InvariantCulture, $"<td class=\"scale\">{RulerDrawing.Head(ruler, RulerWords.SpokenScale(first), Encode)}{Small(ruler, first)}</td><td></td></tr>\n");
            foreach (var line in lines)
            {
                html.Append("<tr>");
                Column("Soil test", Encode(line.Sample ?? ""));
                Column(RatingRows.Columns[1], Lines(RatingRows.Result(line)));
                Column(RatingRows.Columns[2], Verdict(line));
                html.Append(CultureInfo.InvariantCulture, $"<td class=\"scale\">{RulerDrawing.Row(ruler, line.Rating, line.Whisker, RulerWords.Spoken(line), Encode)}</td>");
                Column(SourcedTable.SourceColumn, string.Concat(line.Sources.Select(Mark)));
                html.Append("</tr>\n");
            }

            html.Append("</tbody>\n");
        }

        html.Append("</table>\n");
    }

    private static string Verdict(RatedLine line)
    {
        var said = RatingWords.Verdict(line).Lines;
        return $"<strong>{Encode(said[0])}</strong><br><span class=\"soft\">{string.Join("<br>", said.Skip(1).Select(Encode))}</span>";
    }

    private static string Small(Ruler ruler, Rating rating) =>
        $"<p class=\"ruling\">{(ruler.HoldsNames ? "" : Encode(RulerWords.Key(rating)) + "<br>")}{Encode(ruler.RulingInWords(TradeWords.Of(rating.Scale.Unit)))}</p>";

    private static string Lines(Cell cell) => string.Join("<br>", cell.Lines.Select(Unbroken));

    private string Board(WorkingBlock working) =>
        string.Join("\n", WorkingText.Line(working.Line, sources.Mark).Split('\n').Select(Encode));

    private string Said(Paragraph paragraph) => string.Join(" ", paragraph.Sentences.Select(s =>
    {
        var said = Encode(s.Text);
        return (s.Strong ? $"<strong>{said}</strong>" : said) + string.Concat(s.Sources.Distinct().Select((c, i) => (i == 0 ? " " : "") + Mark(c)));
    }));

    private string Mark(Citation citation) =>
        string.Create(CultureInfo.InvariantCulture, $"<a class=\"mark\" href=\"#source-{sources.NumberOf(citation)}\">{sources.Mark(citation)}</a>");

    // Each cell repeats its column's name for the narrow page, where a row becomes a block of named values.
    private void Table(SourcedTable table)
    {
        Head(null, table.Columns);
        html.Append("<tbody>\n");
        foreach (var row in table.Rows)
        {
            html.Append("<tr>");
            for (var i = 0; i < row.Cells.Count; i++)
            {
                var content = Lines(row.Cells[i]);
                Column(table.Columns[i], i == table.KeyColumn && content.Length > 0 ? $"<strong>{content}</strong>" : content);
            }

            Column(SourcedTable.SourceColumn, string.Concat(row.Sources.Select(Mark)));
            html.Append("</tr>\n");
        }

        html.Append("</tbody>\n</table>\n");
    }

    private void Head(string? kind, IReadOnlyList<string> columns)
    {
        html.Append(CultureInfo.InvariantCulture, $"<table{(kind is null ? "" : $" class=\"{kind}\"")}>\n<thead><tr>");
        foreach (var column in columns.Append(SourcedTable.SourceColumn))
        {
            html.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\">{Encode(column)}</th>");
        }

        html.Append("</tr></thead>\n");
    }

    // An amount and its unit stay on one line.
    private static string Unbroken(string line) =>
        Encode(line.Length <= LongestAmount && line.Any(char.IsAsciiDigit) ? line.Replace(' ', '\u00A0') : line);

    private void Column(string column, string content) =>
        html.Append(CultureInfo.InvariantCulture, $"<td data-column=\"{Encode(column)}\"{(content.Length == 0 ? " class=\"empty\"" : "")}><span>{content}</span></td>");

    private void Sources()
    {
        html.Append(CultureInfo.InvariantCulture, $"<h2 id=\"sources\">Sources</h2>\n<p>{Encode(SourceWords.Explanation)}</p>\n");
        foreach (var used in sources.Used)
        {
            html.Append(CultureInfo.InvariantCulture, $"<div class=\"source\"><p>{Encode(used.Description)}{Link(used.Source?.Link)}</p>\n<ul>\n");
            foreach (var (number, place) in used.Places)
            {
                html.Append(CultureInfo.InvariantCulture, $"<li id=\"source-{number}\">{SourceList.Mark(number, place)} {Encode(SourceWords.Place(place))}</li>\n");
            }

            html.Append("</ul></div>\n");
        }
    }

    // Only a web address may be followed; anything else is printed as text.
    private static string Link(string? link) => link switch
    {
        null => "",
        _ when Uri.TryCreate(link, UriKind.Absolute, out var uri) && (uri.Scheme is "http" or "https") => $" <a href=\"{Encode(link)}\" rel=\"noreferrer\">{Encode(link)}</a>",
        _ => " " + Encode(link),
    };
}
