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
            case RulersBlock rulers:
                html.Append("<div class=\"rulers\">\n");
                foreach (var rating in rulers.Ratings)
                {
                    Ruler(rating);
                }

                html.Append("</div>\n");
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

    private void Ruler(Rating rating)
    {
        html.Append("<figure>\n<figcaption>");
        html.Append(CultureInfo.InvariantCulture, $"<strong>{Encode(TradeWords.Of(rating.Analyte))}: {Encode(RulerWords.Result(rating))}.</strong> {Encode(RatingWords.Verdict(rating))} {Mark(rating.Source)}</figcaption>\n");
        html.Append(RulerDrawing.Svg(rating, RulerWords.Spoken(rating), Encode)).Append("\n</figure>\n");
    }

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
        html.Append("<table>\n<thead><tr>");
        foreach (var column in table.Columns.Append(SourcedTable.SourceColumn))
        {
            html.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\">{Encode(column)}</th>");
        }

        html.Append("</tr></thead>\n<tbody>\n");
        foreach (var row in table.Rows)
        {
            html.Append("<tr>");
            for (var i = 0; i < row.Cells.Count; i++)
            {
                var content = string.Join("<br>", row.Cells[i].Lines.Select(Unbroken));
                Column(table.Columns[i], i == table.KeyColumn && content.Length > 0 ? $"<strong>{content}</strong>" : content);
            }

            Column(SourcedTable.SourceColumn, string.Concat(row.Sources.Select(Mark)));
            html.Append("</tr>\n");
        }

        html.Append("</tbody>\n</table>\n");
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
