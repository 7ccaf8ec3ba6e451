using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Paper;

namespace SoilAdvisor.Reports;

/// <summary>Steps with blanks for a learner to fill in, to be printed; the key is the same calculation with its answers shown.</summary>
public static class WorkSheetReport
{
    /// <summary>As one self-contained HTML file.</summary>
    /// <param name="parts">What each part is about (empty for the whole) and its lines without answers.</param>
    /// <param name="bibliography">Sources by id.</param>
    public static string Html(IReadOnlyList<(string About, IReadOnlyList<WorkingLine> Lines)> parts, IReadOnlyDictionary<string, Source> bibliography)
    {
        var paper = Paper(parts);
        return new HtmlWriter(Sources(paper, bibliography)).Write(paper);
    }

    /// <summary>As Markdown.</summary>
    /// <param name="parts">What each part is about (empty for the whole) and its lines without answers.</param>
    /// <param name="bibliography">Sources by id.</param>
    public static string Markdown(IReadOnlyList<(string About, IReadOnlyList<WorkingLine> Lines)> parts, IReadOnlyDictionary<string, Source> bibliography)
    {
        var paper = Paper(parts);
        return new MarkdownWriter(Sources(paper, bibliography)).Write(paper);
    }

    private static SourceList Sources(ReportPaper paper, IReadOnlyDictionary<string, Source> bibliography) =>
        new(paper.Blocks.SelectMany(b => b.Citations), bibliography);

    private static ReportPaper Paper(IReadOnlyList<(string About, IReadOnlyList<WorkingLine> Lines)> parts) => new("Work sheet",
    [
        new Heading(1, "Work sheet"),
        new Paragraph(new Sentence("Fill in each blank. What is given and what stands in a source is printed; what an earlier line found, carry over yourself.")),
        .. parts.SelectMany(p => (IEnumerable<Block>)[.. p.About.Length > 0 ? new Block[] { new Heading(2, p.About) } : [], .. Steps(p.Lines)]),
    ]);

    private static IEnumerable<Block> Steps(IReadOnlyList<WorkingLine> lines)
    {
        var section = "";
        foreach (var line in lines)
        {
            if (line.Section != section && line.Section.Length > 0)
            {
                yield return new Heading(3, line.Section);
            }

            section = line.Section;
            yield return new WorkingBlock(line);
        }
    }
}
