using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.CoverCrops.Seasons;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.ReferenceTables;
using UnitsNet;

namespace SoilAdvisor.Planning.CoverSeason;

/// <summary>The gaps of a bed as the season takes them.</summary>
public static class BedSeason
{
    // The fastest cover crop in the tables is of use after four weeks.
    private const int ShortestGapDays = 28;

    /// <summary>The season of the beds of a plan; null when none is asked or no bed has a gap.</summary>
    internal static CoverCropSeason? Plan(IEnumerable<BedPlan> beds, SeasonWish? wish, Tables tables, CancellationToken cancel)
    {
        if (wish is null)
        {
            return null;
        }

        var gaps = beds.Where(b => b.CoverCrops is not null)
            .Select(b => Of(b.Bed.Id, b.Bed.Area, b.CoverCrops!, b.Bed.Plantings, b.Bed.Previous, tables.Crops, tables.CoverCrops))
            .ToList();
        return gaps.Count > 0 ? SeasonPlanner.Plan(gaps, wish, cancel) : null;
    }

    /// <summary>The gap that was given; else the times of at least four weeks between the last harvest of a crop and the planting of the next.</summary>
    /// <param name="given">The gap that was given; null for none.</param>
    /// <param name="plantings">Crops of the bed, in order.</param>
    public static IReadOnlyList<Gap> GapsOf(Gap? given, IReadOnlyList<Planting> plantings)
    {
        if (given is not null)
        {
            return [given];
        }

        var gaps = new List<Gap>();
        for (var i = 1; i < plantings.Count; i++)
        {
            if (plantings[i - 1].HarvestEnd is { } end && plantings[i].Planted is { } next && next.DayNumber - end.DayNumber > ShortestGapDays)
            {
                gaps.Add(new Gap(end.AddDays(1), next.AddDays(-1)));
            }
        }

        return gaps;
    }

    /// <summary>The planting that follows a gap; null when none is dated.</summary>
    /// <param name="gap">The gap.</param>
    /// <param name="plantings">Crops of the bed, in order.</param>
    public static Planting? NextCrop(Gap gap, IReadOnlyList<Planting> plantings) => plantings.FirstOrDefault(p => p.Planted >= gap.To);

    /// <summary>The crop that stood before a gap; null when not known.</summary>
    /// <param name="gap">The gap.</param>
    /// <param name="plantings">Crops of the bed, in order.</param>
    /// <param name="previous">What stood before.</param>
    /// <param name="crops">Crops by id.</param>
    public static Crop? LastCrop(Gap gap, IReadOnlyList<Planting> plantings, IReadOnlyList<PreviousStand> previous, IReadOnlyDictionary<string, Crop> crops) =>
        plantings.LastOrDefault(p => p.Planted < gap.From)?.Crop
        ?? (previous.LastOrDefault(p => !p.IsCoverCrop) is { } stood && crops.TryGetValue(stood.What, out var crop) ? crop : null);

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
        var next = NextCrop(selection.Gap, plantings);
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
