using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Paper;

/// <summary>The ratings of a soil test, each with its ruler.</summary>
internal sealed record RulersBlock(IReadOnlyList<Rating> Ratings) : Block
{
    public override IEnumerable<Citation> Citations => Ratings.Select(r => r.Source);
}
