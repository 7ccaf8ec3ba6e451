using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Paper;
using SoilAdvisor.Reports.Sheets;

namespace SoilAdvisor.Reports;

/// <summary>A plan as plain Markdown: one fact a line where it can be, so that two plans can be compared line by line.</summary>
public static class MarkdownReport
{
    /// <summary>Writes the report. The same plan gives the same text; line ends are line feeds.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="bibliography">Sources by id; a source that is not in it is printed by its id and said to be missing.</param>
    /// <param name="units">Units of weights, areas and rates.</param>
    public static string Write(FarmPlan plan, IReadOnlyDictionary<string, Source> bibliography, ReportUnits units = ReportUnits.Us)
    {
        var paper = FarmPaper.Of(plan, units);
        return new MarkdownWriter(new SourceList(paper.Blocks.SelectMany(b => b.Citations), bibliography)).Write(paper);
    }
}
