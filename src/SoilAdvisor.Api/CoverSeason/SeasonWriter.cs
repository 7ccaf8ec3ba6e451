using SoilAdvisor.Agronomy.CoverCrops.Seasons;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.CoverCrops;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.CoverSeason;

/// <summary>Writes a season out.</summary>
internal static class SeasonWriter
{
    private const int BestShown = 3;

    private static readonly Dictionary<SeasonWork, string> Works = new()
    {
        [SeasonWork.Sow] = "sow",
        [SeasonWork.Mow] = "mow",
        [SeasonWork.Kill] = "kill",
        [SeasonWork.Plant] = "plant",
    };

    public static CoverSeasonAnswer? Write(CoverCropSeason? season, Calculation calculation)
    {
        if (season is null)
        {
            return null;
        }

        calculation.Assume(season.Assumptions);
        return new CoverSeasonAnswer(
            [.. season.Stands.Select(s => Write(s, calculation))],
            [.. season.Seed.Select(s => Write(s, calculation))],
            season.Points,
            season.Taken,
            season.IsBest,
            season.Ended,
            MoneyAnswer.Of(season.Cost),
            season.Stands is [var first, ..] ? [.. first.Gap.Selection.Weights.All.Select(w => new WeightAnswer(w.Kind, Units.Rounded(w.Weight.Value)))] : [],
            calculation.Cite(Citation.OurArithmetic));
    }

    private static SeasonStandAnswer Write(SeasonStand stand, Calculation calculation)
    {
        var gap = stand.Gap.Selection.Gap;
        return new SeasonStandAnswer(
            stand.Gap.Bed,
            new GapAnswer(Dates.Write(gap.From), Dates.Write(gap.To), gap.Days),
            stand.Choice?.CoverCrop.Id,
            stand.Choice?.CoverCrop.Name,
            Units.Rounded(stand.Choice?.Score ?? 0),
            stand.Choice is { } choice ? [.. choice.Reasons.Where(r => r.Points != 0).Select(r => CoverCropWriter.Write(r, calculation))] : null,
            [.. stand.Tasks.Select(t => new SeasonTaskAnswer(Works[t.Work], Dates.Write(t.Day), t.Text))],
            stand.Seed is { } seed ? calculation.Units.Of(seed) : null,
            stand.Said?.Value,
            [.. stand.Gap.Selection.Choices.Take(BestShown).Select(c => new SeasonChoiceAnswer(c.CoverCrop.Id, c.CoverCrop.Name, Units.Rounded(c.Score)))],
            calculation.Cite(Citation.OurArithmetic));
    }

    private static SeedNeedAnswer Write(SeedNeed seed, Calculation calculation) => new(
        seed.CoverCrop.Id,
        seed.CoverCrop.Name,
        seed.Beds,
        seed.Needed is { } needed ? calculation.Units.Of(needed) : null,
        calculation.Units.Of(seed.OnHand),
        seed.ToBuy is { } buy ? calculation.Units.Of(buy) : null,
        seed.Packs,
        seed.Pack is { } pack ? calculation.Units.Of(pack) : null,
        MoneyAnswer.Of(seed.Cost),
        calculation.Cite(Citation.OurArithmetic));
}
