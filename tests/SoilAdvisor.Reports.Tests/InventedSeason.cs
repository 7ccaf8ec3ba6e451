using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.CoverCrops.Seasons;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Reports.Tests;

/// <summary>A season made up for these tests: dates, points and species stand for nothing outside them.</summary>
internal static class InventedSeason
{
    private static readonly Citation Source = InventedPlan.MaterialPage;

    public static CoverCropSeason Season(string bed = "1A", string next = "Spinach") => new(
        [
            new SeasonStand(Gap(bed, next), Choice(new DateOnly(2027, 7, 5)), new Cited<string>("Quick cover scores 1 point less here than Slow cover.", Citation.OurArithmetic)),
            new SeasonStand(Gap("bare", "Kale"), null, new Cited<string>("Stays bare. Nothing in the tables fits this gap.", Citation.OurArithmetic)),
        ],
        [new SeedNeed(Cover, 1, Mass.FromGrams(180), Mass.FromGrams(30), Mass.FromGrams(200), 1, Mass.FromGrams(200), new(6.5m, "USD"))],
        new SeasonWish(2, 1, 12, false, []),
        7,
        0,
        true,
        "No other choice for these beds scores higher under what you asked.",
        new(6.5m, "USD"),
        [new Assumption("season-points", "Every bed counts once.", Citation.OurJudgement)]);

    public static CoverCropSeason SownOn(DateOnly day)
    {
        var season = Season();
        return season with { Stands = [season.Stands[0] with { Choice = Choice(day) }, season.Stands[1]] };
    }

    private static CoverCrop Cover { get; } = new("quick-cover", "Quick cover", null, "Polygonaceae", "summer annual", "warm", [new CoverCropValue("termination", null, null, null, "", "mow; or frost, whichever comes first", Source, null)], Source);

    private static SeasonGap Gap(string bed, string next)
    {
        var gap = new Gap(new DateOnly(2027, 7, 5), new DateOnly(2027, 8, 25));
        return new SeasonGap(bed, Area.FromSquareFeet(250), new CoverCropSelection(gap, [], [], ["cover"], CoverCropWeights.Standard, null, null, []), next, new DateOnly(2027, 9, 1), []);
    }

    private static CoverCropChoice Choice(DateOnly sow) => new(
        Cover,
        7,
        [new CoverCropReason("cover", "invented", 7, 1, Source)],
        new CoverWindow(sow, sow.AddDays(2), sow.AddDays(35), new DateOnly(2027, 7, 26), new DateOnly(2027, 8, 11), new DateOnly(2027, 8, 25), WinterFate.NoWinter, null, new CoverCropValue("days-to-use", null, 35, 40, "days", null, Source, null), null, new PlantBack(14, []), null),
        new CoverCropNumbers(null, null, [], null, null, null, []),
        Mass.FromGrams(180),
        null,
        null,
        null,
        null);
}
