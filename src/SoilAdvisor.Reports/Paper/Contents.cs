using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Paper;

/// <summary>Ways into the report: text and anchor.</summary>
internal sealed record Contents(IReadOnlyList<(string Text, string Anchor)> Entries) : Block
{
    public override IEnumerable<Citation> Citations => [];
}
