using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.CoverCrops.Seasons;

namespace SoilAdvisor.Planning.CoverSeason;

/// <summary>A season in whole numbers: what may grow where, what excludes what, and what seed there is. Knows no solver.</summary>
internal sealed class SeasonModel
{
    private readonly List<CoverCrop> species = [];

    public SeasonModel(IReadOnlyList<SeasonGap> gaps, SeasonWish wish)
    {
        (Gaps, Wish) = (gaps, wish);
        HundredthsPerSpecies = Hundredths(wish.PointsPerSpecies);
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var cover in gaps.SelectMany(g => g.Selection.Choices).Select(c => c.CoverCrop).DistinctBy(c => c.Id).OrderBy(c => c.Id, StringComparer.Ordinal))
        {
            places.Add(cover.Id, species.Count);
            species.Add(cover);
        }

        Stocks = [.. species.Select(s => wish.Of(s.Id))];
        Options = [.. gaps.SelectMany((gap, g) => gap.Selection.Choices.Select((c, rank) => Option(g, places[c.CoverCrop.Id], c, rank)).Where(o => o.Hundredths > 0 && TooSoon(o) is null))];
        Exclusions = [.. ExclusionsOf(Options)];
    }

    public IReadOnlyList<SeasonGap> Gaps { get; }

    public SeasonWish Wish { get; }

    public IReadOnlyList<CoverCrop> Species => species;

    public IReadOnlyList<SeedStock> Stocks { get; }

    /// <summary>What may be chosen: points above zero, and not within the family gap of a crop of the bed.</summary>
    public IReadOnlyList<SeasonOption> Options { get; }

    /// <summary>Pairs of places among the options that must not be chosen together: one bed, one family, within the family gap.</summary>
    public IReadOnlyList<(int First, int Second)> Exclusions { get; }

    public long HundredthsPerSpecies { get; }

    public static long Grams(UnitsNet.Mass mass) => (long)Math.Ceiling(mass.Grams - 1e-6);

    public static long Hundredths(decimal points) => (long)Math.Round(points * 100, MidpointRounding.AwayFromZero);

    /// <summary>The crop of the bed that is too near in time for a cover crop of its family; null for none.</summary>
    public CropTime? TooSoon(SeasonOption option) => Wish.FamilyGapMonths is { } months
        ? Gaps[option.Gap].Crops.FirstOrDefault(c => c.Family == option.Choice.CoverCrop.Family && c.IsWithin(option.Choice.Window.Sow, option.Choice.Window.KillBy, months))
        : null;

    /// <summary>The option of a gap by its choice, whether or not it may be chosen.</summary>
    public SeasonOption Option(int gap, CoverCropChoice choice) =>
        Option(gap, species.FindIndex(s => s.Id == choice.CoverCrop.Id), choice, Gaps[gap].Selection.Choices.Index().First(c => ReferenceEquals(c.Item, choice)).Index);

    /// <summary>Whether two options may not stand together.</summary>
    public bool Excludes(SeasonOption a, SeasonOption b) =>
        Wish.FamilyGapMonths is { } months
        && a.Gap != b.Gap
        && Gaps[a.Gap].Bed == Gaps[b.Gap].Bed
        && a.Choice.CoverCrop.Family == b.Choice.CoverCrop.Family
        && new CropTime(a.Choice.CoverCrop.Name, a.Choice.CoverCrop.Family, a.Choice.Window.Sow, a.Choice.Window.KillBy).IsWithin(b.Choice.Window.Sow, b.Choice.Window.KillBy, months);

    private static SeasonOption Option(int gap, int place, CoverCropChoice choice, int rank) =>
        new(gap, place, choice, Hundredths((decimal)choice.Score), choice.SeedPerBed is { } seed ? Grams(seed) : 0, rank);

    private IEnumerable<(int, int)> ExclusionsOf(IReadOnlyList<SeasonOption> options)
    {
        foreach (var bed in options.Index().GroupBy(o => Gaps[o.Item.Gap].Bed, StringComparer.Ordinal).Where(b => b.Select(o => o.Item.Gap).Distinct().Count() > 1))
        {
            var all = bed.ToList();
            for (var a = 0; a < all.Count; a++)
            {
                foreach (var b in all.Skip(a + 1).Where(b => Excludes(all[a].Item, b.Item)))
                {
                    yield return (all[a].Index, b.Index);
                }
            }
        }
    }
}
