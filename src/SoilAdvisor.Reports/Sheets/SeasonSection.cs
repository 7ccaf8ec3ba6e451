using System.Globalization;
using SoilAdvisor.Agronomy.CoverCrops.Seasons;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Paper;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Sheets;

/// <summary>The season of cover crops on the farm sheet: a calendar by month in letters, the seed to buy, and what was traded.</summary>
internal static class SeasonSection
{
    private const int MonthsInTable = 12;

    public static IEnumerable<Block> Of(FarmPlan plan, Measures measures)
    {
        if (plan.CoverSeason is not { } season)
        {
            yield break;
        }

        yield return new Heading(3, "Cover crops for the season");
        yield return Lead(season);
        yield return new Paragraph(new Sentence("S sow, M mow, K end it, P plant the next crop, each with its day; o it grows. Sow and plant from that day on; end it by that day."));
        foreach (var table in Calendar(season))
        {
            yield return table;
        }

        var said = season.Stands.Where(s => s.Said is not null).ToList();
        if (said.Count > 0)
        {
            yield return new Bullets([.. said.Select(s => new Paragraph(Sentence.Bold($"Bed {s.Gap.Bed}:"), new Sentence(TradeWords.Sentence(s.Said!.Value), s.Said.Source)))]);
        }

        if (season.Seed.Count > 0)
        {
            yield return new Heading(4, "Seed");
            yield return Seed(season, measures);
        }

        yield return new Fold("How the season was chosen", 4, [Points(season), FarmPaper.Said(season.Assumptions)]);
    }

    private static Paragraph Lead(CoverCropSeason season)
    {
        var grown = season.Stands.Count(s => s.Choice is not null);
        var species = season.Seed.Count;
        return new Paragraph(
            [
                Sentence.Bold(string.Create(CultureInfo.InvariantCulture, $"{grown} of {season.Stands.Count} {(season.Stands.Count == 1 ? "gap grows" : "gaps grow")} a cover crop, of {species} {(species == 1 ? "species" : "different species")}."), Citation.OurArithmetic),
                new Sentence(TradeWords.Sentence(season.Ended), Citation.OurArithmetic),
            ],
            IsLead: true);
    }

    private static IEnumerable<Block> Calendar(CoverCropSeason season)
    {
        var days = season.Stands.SelectMany(s => s.Tasks).Select(t => t.Day).ToList();
        var months = Months(days.Min(), days.Max()).ToList();
        foreach (var part in months.Chunk(MonthsInTable))
        {
            yield return new SourcedTable(
                ["Bed", "Cover crop", .. part.Select(m => m.ToString("MMM yyyy", CultureInfo.InvariantCulture))],
                [.. season.Stands.Select(s => new SourcedRow([s.Gap.Bed, s.Choice?.CoverCrop.Name ?? "bare", .. part.Select(m => Month(s, m))], Sources(s)))]);
        }
    }

    private static IEnumerable<DateOnly> Months(DateOnly first, DateOnly last)
    {
        for (var month = new DateOnly(first.Year, first.Month, 1); month <= last; month = month.AddMonths(1))
        {
            yield return month;
        }
    }

    private static Cell Month(SeasonStand stand, DateOnly month)
    {
        var end = month.AddMonths(1).AddDays(-1);
        var work = stand.Tasks.Where(t => t.Day >= month && t.Day <= end).Select(t => string.Create(CultureInfo.InvariantCulture, $"{Letter(t.Work)} {t.Day.Day}")).ToList();
        return work.Count > 0 ? Cell.Of(work)
            : stand.Choice is { Window: var window } && window.Sow < month && window.KillBy > end ? "o"
            : "";
    }

    private static string Letter(SeasonWork work) => work switch
    {
        SeasonWork.Sow => "S",
        SeasonWork.Mow => "M",
        SeasonWork.Kill => "K",
        _ => "P",
    };

    private static IEnumerable<Citation> Sources(SeasonStand stand) => stand.Choice is { } choice ? [choice.Window.DaysNeeded.Source, Citation.OurArithmetic] : [Citation.OurArithmetic];

    private static SourcedTable Seed(CoverCropSeason season, Measures measures)
    {
        var rows = season.Seed.Select(s => new SourcedRow(
            [
                s.CoverCrop.Name,
                s.Beds.ToString(CultureInfo.InvariantCulture),
                s.Needed is { } needed ? measures.Weight(needed) : "no seed rate held",
                measures.Weight(s.OnHand),
                s.ToBuy is not { } buy ? "weigh it by the packet" : buy.Grams > 0 ? Cell.Of([measures.Weight(buy), .. s is { Packs: { } packs, Pack: { } pack } ? [string.Create(CultureInfo.InvariantCulture, $"{packs} of {measures.Weight(pack)}")] : Array.Empty<string>()]) : "nothing",
                s.ToBuy is { Grams: > 0 } ? Measures.Cost(s.Cost) : "",
            ],
            [Citation.OurArithmetic])).ToList();
        return new SourcedTable(["Seed of", "Beds", "Needed", "On hand", "To buy", "Cost"], rows, KeyColumn: 4);
    }

    private static Paragraph Points(CoverCropSeason season) => new(
        new Sentence(string.Create(CultureInfo.InvariantCulture, $"The beds score {season.Points:0.##} points together; {season.Taken:0.##} are taken off for the number of species. How each cover crop scores stands on the sheet of its bed."), Citation.OurArithmetic),
        new Sentence(Weights(season), Citation.OurJudgement));

    private static string Weights(CoverCropSeason season)
    {
        var weights = season.Stands[0].Gap.Selection.Weights.All.Where(w => w.Weight.Value != 0).GroupBy(w => w.Weight.Value).OrderByDescending(g => g.Key);
        return "Weights of the reasons: " + string.Join("; ", weights.Select(g => string.Create(CultureInfo.InvariantCulture, $"{string.Join(", ", g.Select(w => w.Kind))} {g.Key:0.##}"))) + ".";
    }
}
