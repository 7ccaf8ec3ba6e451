using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Paper;

/// <summary>A rating with its ruler.</summary>
internal sealed record RatingBlock(Rating Rating) : Block
{
    public override IEnumerable<Citation> Citations => [Rating.Source];
}
