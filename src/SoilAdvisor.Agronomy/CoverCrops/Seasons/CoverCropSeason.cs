using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops.Seasons;

/// <summary>Which cover crop grows when on every bed, chosen for the whole farm.</summary>
/// <param name="Stands">One a gap, in the order given.</param>
/// <param name="Seed">Seed by species, in the order of their names.</param>
/// <param name="Wish">What was asked.</param>
/// <param name="Points">Sum of the points of all stands.</param>
/// <param name="Taken">Points taken off for the number of species.</param>
/// <param name="IsBest">True when no better choice exists under the wish; false when the search ended before that was proven.</param>
/// <param name="Ended">How the search ended, in one sentence.</param>
/// <param name="Cost">Cost of the seed to buy; null unless everything bought has a price in one currency.</param>
/// <param name="Assumptions">What was taken as true.</param>
public sealed record CoverCropSeason(
    IReadOnlyList<SeasonStand> Stands,
    IReadOnlyList<SeedNeed> Seed,
    SeasonWish Wish,
    decimal Points,
    decimal Taken,
    bool IsBest,
    string Ended,
    Money? Cost,
    IReadOnlyList<Assumption> Assumptions)
{
    /// <summary>The species that are grown.</summary>
    public IReadOnlyList<CoverCrop> Species => [.. Seed.Select(s => s.CoverCrop)];
}
