using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Rulers;

namespace SoilAdvisor.Reports.Paper;

/// <summary>The ratings of one soil test: a line each, with its own ruler.</summary>
internal sealed record RatingTable(IReadOnlyList<RatedLine> Lines) : Block
{
    public override IEnumerable<Citation> Citations => Lines.SelectMany(l => l.Sources);
}
