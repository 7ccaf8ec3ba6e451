using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Reports.Paper;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Sheets;

/// <summary>Organic findings, those that stop the plan first.</summary>
internal static class FindingTable
{
    public static SourcedTable Of(IEnumerable<Finding> findings) => new(
        ["Outcome", "Rule", "What was found and what to do", "Record to keep"],
        [
            .. findings
                .OrderByDescending(f => f.Blocks)
                .ThenBy(f => f.State switch { FindingState.Act => 0, FindingState.NotDecidable => 1, _ => 2 })
                .Select(f => new SourcedRow(
                    [
                        f.Blocks ? Cell.Of(TradeWords.Of(f.State), "Do not carry out the plan as it stands.") : TradeWords.Of(f.State),
                        $"{f.Standard} {f.Section}",
                        TradeWords.Sentence(f.Message),
                        f.Record ?? "none asked for",
                    ],
                    [f.Source])),
        ]);
}
