using System.Text;
using SoilAdvisor.Reports.Sheets;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Paper;

/// <summary>Writes blocks as Markdown.</summary>
internal sealed class MarkdownWriter(SourceList sources)
{
    private readonly StringBuilder text = new();

    public string Write(ReportPaper paper)
    {
        foreach (var block in paper.Blocks)
        {
            Write(block);
        }

        Sources();
        return text.ToString();
    }

    private void Write(Block block)
    {
        switch (block)
        {
            case Heading heading:
                Row($"{new string('#', heading.Level)} {MarkdownText.Escape(heading.Text)}");
                break;
            case Paragraph paragraph:
                Row(MarkdownText.AtLineStart(Said(paragraph)));
                break;
            case Bullets bullets:
                foreach (var entry in bullets.Entries)
                {
                    text.Append("- ").Append(MarkdownText.AtLineStart(Said(entry))).Append('\n');
                }

                text.Append('\n');
                break;
            case SourcedTable table:
                Table(table);
                break;
            case RatingTable ratings:
                Table(RatingRows.Of(ratings));
                break;
            case ComparisonTable comparison:
                Table(RatingRows.Of(comparison));
                break;
            case WorkingBlock working:
                Code(WorkingText.Line(working.Line, sources.Mark));
                break;
            case Fold fold:
                Row($"{new string('#', fold.Level)} {MarkdownText.Escape(fold.Title)}");
                foreach (var inside in fold.Blocks)
                {
                    Write(inside);
                }

                break;
            case Contents:
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(block), block.GetType().Name, "Not a block that this writer knows.");
        }
    }

    private string Said(Paragraph paragraph) => string.Join(" ", paragraph.Sentences.Select(s =>
    {
        var said = MarkdownText.Escape(s.Text);
        return (s.Strong ? $"**{said}**" : said) + string.Concat(s.Sources.Distinct().Select((c, i) => (i == 0 ? " " : "") + sources.Mark(c)));
    }));

    private void Table(SourcedTable table)
    {
        TableRow([.. table.Columns, SourcedTable.SourceColumn]);
        TableRow(Enumerable.Repeat("---", table.Columns.Count + 1));
        foreach (var row in table.Rows)
        {
            TableRow([.. row.Cells.Select((c, i) => Text(c, i == table.KeyColumn)), string.Concat(row.Sources.Select(sources.Mark))]);
        }

        text.Append('\n');
    }

    private static string Text(Cell cell, bool isKey)
    {
        // A line that ends its own sentence needs no other mark before the next.
        var escaped = string.Join("; ", cell.Lines.Select(MarkdownText.Escape)).Replace(".; ", ". ", StringComparison.Ordinal);
        return isKey && escaped.Length > 0 ? $"**{escaped}**" : escaped;
    }

    private void TableRow(IEnumerable<string> cells) => text.Append("| ").Append(string.Join(" | ", cells)).Append(" |\n");

    // The fence must be longer than any run of the same sign inside it.
    private void Code(string content)
    {
        var fence = new string('`', Math.Max(3, MarkdownText.LongestRun(content, '`') + 1));
        text.Append(fence).Append("text\n").Append(content).Append('\n').Append(fence).Append("\n\n");
    }

    private void Row(string row) => text.Append(row).Append("\n\n");

    private void Sources()
    {
        Row("## Sources");
        Row(SourceWords.Explanation);
        foreach (var used in sources.Used)
        {
            text.Append(MarkdownText.AtLineStart(MarkdownText.Escape(used.Description)));
            if (used.Source?.Link is { } link)
            {
                text.Append(' ').Append(MarkdownText.Escape(link));
            }

            text.Append("\n\n");
            foreach (var (number, place) in used.Places)
            {
                text.Append("- ").Append(SourceList.Mark(number, place)).Append(' ').Append(MarkdownText.Escape(SourceWords.Place(place))).Append('\n');
            }

            text.Append('\n');
        }

        // One line feed ends the file.
        text.Length--;
    }
}
