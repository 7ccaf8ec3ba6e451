using SoilAdvisor.Agronomy.Climate;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.CoverCrops.Seasons;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Planning.Tests.CoverSeason;

/// <summary>Invented beds, gaps and points: only the choice for the whole farm is tested with them.</summary>
internal static class InventedSeason
{
    public static readonly DateOnly Start = new(2027, 7, 1);

    public static readonly SeasonWish Free = new(null, 0, null, false, []);

    private static readonly Citation Source = new("invented", null, Evidence.Seen);

    public static readonly CoverCrop Buckwheat = Cover("buckwheat", "Polygonaceae");
    public static readonly CoverCrop Mustard = Cover("mustard", "Brassicaceae");
    public static readonly CoverCrop Radish = Cover("radish", "Brassicaceae");
    public static readonly CoverCrop Pea = Cover("pea", "Fabaceae");
    public static readonly CoverCrop Oats = Cover("oats", "Poaceae");

    public static readonly IReadOnlyList<CoverCrop> All = [Buckwheat, Mustard, Radish, Pea, Oats];

    public static CoverCrop Cover(string id, string family) => new(id, char.ToUpperInvariant(id[0]) + id[1..], null, family, "annual", "cool", [], Source);

    /// <summary>A gap of a bed that begins so many days after the start and lasts sixty.</summary>
    public static SeasonGap Gap(string bed, int afterDays, IReadOnlyList<CropTime>? crops, params (CoverCrop Cover, double Points)[] fits) => Gap(bed, afterDays, 100, crops, fits);

    public static SeasonGap Gap(string bed, int afterDays, double? grams, IReadOnlyList<CropTime>? crops, params (CoverCrop Cover, double Points)[] fits)
    {
        var gap = new Gap(Start.AddDays(afterDays), Start.AddDays(afterDays + 60));
        var choices = fits.OrderByDescending(f => f.Points).ThenBy(f => f.Cover.Id, StringComparer.Ordinal).Select(f => Choice(f.Cover, f.Points, gap, grams)).ToList();
        return new SeasonGap(bed, Area.FromSquareFeet(250), new CoverCropSelection(gap, choices, [], ["cover"], CoverCropWeights.Standard, null, null, []), null, null, crops ?? []);
    }

    private static CoverCropChoice Choice(CoverCrop cover, double points, Gap gap, double? grams) => new(
        cover,
        points,
        [new CoverCropReason("cover", "invented", points, 1, Source)],
        new CoverWindow(gap.From, gap.From.AddDays(10), gap.From.AddDays(30), null, gap.To.AddDays(-14), gap.To, WinterFate.NoWinter, null, new CoverCropValue("days-to-use", 30, null, null, "days", null, Source, null), null, new PlantBack(14, []), null),
        new CoverCropNumbers(null, null, [], null, null, null, []),
        grams is { } g ? Mass.FromGrams(g) : null,
        null,
        null,
        null,
        null);

    /// <summary>A season at random, the same for the same seed.</summary>
    public static (IReadOnlyList<SeasonGap> Gaps, SeasonWish Wish) Random(int seed)
    {
        var dice = new Random(seed);
        var gaps = new List<SeasonGap>();
        for (var i = 0; i < 5; i++)
        {
            var fits = All.Where(_ => dice.Next(4) > 0).Select(c => (c, Math.Round((dice.NextDouble() * 9) - 1, 1))).ToArray();
            var crops = dice.Next(3) == 0 ? new[] { new CropTime("Cabbage", "Brassicaceae", Start.AddDays(-60), Start.AddDays(-1)) } : [];
            gaps.Add(Gap($"B{i / 2}", i % 2 * 90, dice.Next(50, 400), crops, fits));
        }

        var stocks = All.Where(_ => dice.Next(2) == 0).Select(c => new SeedStock(c.Id, Mass.FromGrams(dice.Next(0, 600)), dice.Next(2) == 0, dice.Next(2) == 0 ? Mass.FromGrams(250) : null, null)).ToList();
        return (gaps, new SeasonWish(dice.Next(3) == 0 ? null : dice.Next(1, 4), dice.Next(0, 4), dice.Next(2) == 0 ? null : dice.Next(0, 5), false, stocks));
    }
}
