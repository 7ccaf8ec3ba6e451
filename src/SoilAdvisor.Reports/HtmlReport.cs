using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Paper;
using SoilAdvisor.Reports.Sheets;

namespace SoilAdvisor.Reports;

/// <summary>
/// A plan as one self-contained HTML file: no script, no font and no picture from elsewhere. Reads on a phone and prints in one ink.
/// </summary>
public static class HtmlReport
{
    /// <summary>Writes the report. The same plan gives the same text. All text is encoded.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="bibliography">Sources by id; a source that is not in it is printed by its id and said to be missing.</param>
    /// <param name="units">Units of weights, areas and rates.</param>
    public static string Write(FarmPlan plan, IReadOnlyDictionary<string, Source> bibliography, ReportUnits units = ReportUnits.Us)
    {
        var paper = FarmPaper.Of(plan, units);
        return new HtmlWriter(new SourceList(paper.Blocks.SelectMany(b => b.Citations), bibliography)).Write(paper);
    }
}
