using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Checks;

/// <summary>One rule held against records and plan. The certifier decides.</summary>
internal sealed record FindingAnswer(string Rule, string Standard, string Section, string State, string Message, string? Record, bool Blocks, CitedAs By) : Sourced(By)
{
    public static FindingAnswer Of(Finding finding, Calculation calculation) => new(
        finding.Rule,
        finding.Standard,
        finding.Section,
        WordOf(finding.State),
        finding.Message,
        finding.Record,
        finding.Blocks,
        calculation.Cite(finding.Source));

    public static string WordOf(FindingState state) => state switch
    {
        FindingState.Pass => "pass",
        FindingState.Act => "act",
        _ => "not-decidable",
    };
}
