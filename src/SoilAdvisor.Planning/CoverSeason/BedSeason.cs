using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.CoverCrops.Seasons;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Plans;
using UnitsNet;

namespace SoilAdvisor.Planning.CoverSeason;

/// <summary>The gaps of a bed as the season takes them.</summary>
public static class BedSeason
{
    /// <summary>A bed with its choice of cover crops.</summary>
    /// <param name="bed">The user's id of the bed.</param>
    /// <param name="ground">Ground to sow.</param>
    /// <param name="selection">What fits the gap.</param>
    /// <param name="plantings">Crops of the bed, in order.</param>
    /// <param name="previous">What stood before.</param>
    /// <param name="crops">Crops by id.</param>
    /// <param name="coverCrops">Cover crops by id.</param>
    public static SeasonGap Of(
        string bed,
        Area ground,
        CoverCropSelection selection,
        IReadOnlyList<Planting> plantings,
        IReadOnlyList<PreviousStand> previous,
        IReadOnlyDictionary<string, Crop> crops,
        IReadOnlyDictionary<string, CoverCrop> coverCrops)
    {
        var next = plantings.FirstOrDefault(p => p.Planted > selection.Gap.To);
        return new SeasonGap(bed, ground, selection, next?.Crop.Name, next?.Planted, [.. Times(selection.Gap, plantings), .. Before(selection.Gap, plantings, previous, crops, coverCrops)]);
    }

    private static IEnumerable<CropTime> Times(Gap gap, IReadOnlyList<Planting> plantings)
    {
        foreach (var planting in plantings)
        {
            var last = planting.HarvestEnd ?? planting.FirstHarvest;
            if ((planting.Planted ?? last) is { } first)
            {
                var end = last ?? (first < gap.From ? gap.From.AddDays(-1) : first);
                yield return new CropTime(planting.Crop.Name, planting.Crop.Family, first, end < first ? first : end);
            }
        }
    }

    // A stand before the plan has at most the day that it was killed; without one it stood until the first thing that is dated.
    private static IEnumerable<CropTime> Before(Gap gap, IReadOnlyList<Planting> plantings, IReadOnlyList<PreviousStand> previous, IReadOnlyDictionary<string, Crop> crops, IReadOnlyDictionary<string, CoverCrop> coverCrops)
    {
        var first = plantings.Select(p => p.Planted).OfType<DateOnly>().Append(gap.From).Min().AddDays(-1);
        foreach (var stand in previous)
        {
            var (name, family) = stand.IsCoverCrop
                ? (coverCrops.GetValueOrDefault(stand.What)?.Name, coverCrops.GetValueOrDefault(stand.What)?.Family)
                : (crops.GetValueOrDefault(stand.What)?.Name, crops.GetValueOrDefault(stand.What)?.Family);
            if (name is not null && family is not null)
            {
                yield return new CropTime(name, family, stand.Killed ?? first, stand.Killed ?? first);
            }
        }
    }
}
