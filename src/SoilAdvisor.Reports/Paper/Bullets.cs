using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Paper;

/// <summary>A list of paragraphs.</summary>
internal sealed record Bullets(IReadOnlyList<Paragraph> Entries) : Block
{
    public override IEnumerable<Citation> Citations => Entries.SelectMany(i => i.Citations);
}
