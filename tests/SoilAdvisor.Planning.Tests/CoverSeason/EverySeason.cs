using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.CoverCrops.Seasons;

namespace SoilAdvisor.Planning.Tests.CoverSeason;

/// <summary>Tries every combination of a small season. Knows only the words of the wish.</summary>
internal static class EverySeason
{
    /// <summary>Most points less those for further species.</summary>
    public static decimal Best(IReadOnlyList<SeasonGap> gaps, SeasonWish wish) => From(gaps, wish, [], 0);

    private static decimal From(IReadOnlyList<SeasonGap> gaps, SeasonWish wish, List<(SeasonGap Gap, CoverCropChoice Choice)> chosen, int at)
    {
        if (at == gaps.Count)
        {
            return IsAllowed(wish, chosen) ? chosen.Sum(c => (decimal)c.Choice.Score) - (wish.PointsPerSpecies * Math.Max(0, chosen.Select(c => c.Choice.CoverCrop.Id).Distinct().Count() - 1)) : decimal.MinValue;
        }

        var best = From(gaps, wish, chosen, at + 1);
        foreach (var choice in gaps[at].Selection.Choices)
        {
            chosen.Add((gaps[at], choice));
            best = Math.Max(best, From(gaps, wish, chosen, at + 1));
            chosen.RemoveAt(chosen.Count - 1);
        }

        return best;
    }

    private static bool IsAllowed(SeasonWish wish, List<(SeasonGap Gap, CoverCropChoice Choice)> chosen)
    {
        if (chosen.Select(c => c.Choice.CoverCrop.Id).Distinct().Count() > (wish.MostSpecies ?? int.MaxValue))
        {
            return false;
        }

        if (chosen.GroupBy(c => c.Choice.CoverCrop.Id).Any(g => wish.Of(g.Key) is { CanBuy: false } stock && g.Sum(c => c.Choice.SeedPerBed?.Grams ?? 0) > stock.OnHand.Grams))
        {
            return false;
        }

        return wish.FamilyGapMonths is not { } months || chosen.All(c =>
            c.Gap.Crops.All(crop => crop.Family != c.Choice.CoverCrop.Family || Apart(c.Choice, crop.From, crop.To, months))
            && chosen.All(o => ReferenceEquals(o.Choice, c.Choice) || o.Gap.Bed != c.Gap.Bed || o.Choice.CoverCrop.Family != c.Choice.CoverCrop.Family || Apart(c.Choice, o.Choice.Window.Sow, o.Choice.Window.KillBy, months)));
    }

    private static bool Apart(CoverCropChoice choice, DateOnly from, DateOnly to, int months) =>
        choice.Window.Sow >= to.AddMonths(months) || from >= choice.Window.KillBy.AddMonths(months);
}
