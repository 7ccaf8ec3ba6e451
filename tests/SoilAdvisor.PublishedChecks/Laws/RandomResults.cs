using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using UnitsNet;

namespace SoilAdvisor.PublishedChecks.Laws;

/// <summary>Random results for the guides: mostly what a guide covers, in any unit, any kind of amount and any company; seeded.</summary>
internal sealed class RandomResults(int seed)
{
    /// <summary>Exchange capacities drawn: few, so that values on one scale can be compared at the same one.</summary>
    private static readonly decimal[] Cecs = [3m, 8.1m, 20m];

    private static readonly ReportingUnit[] Units = Enum.GetValues<ReportingUnit>();
    private static readonly SoilGroup[] Textures = Enum.GetValues<SoilGroup>();
    private static readonly Extractant[] Extractants = Enum.GetValues<Extractant>();
    private static readonly Analyte[] Others = [Analyte.Ph, Analyte.P, Analyte.CationExchangeCapacity, Analyte.OrganicMatter, Analyte.Al, Analyte.Fe];

    private readonly Random random = new(seed);

    /// <summary>One result: a scale of the guide was looked at to make it, but nothing forces it to fit.</summary>
    public (SoilTest Test, RatingContext Context) For(Guide guide)
    {
        var scale = guide.Scales[random.Next(guide.Scales.Count)];
        var likely = random.Next(50) > 0;
        var method = new Method(
            likely ? scale.Method.Extractant : Extractants[random.Next(Extractants.Length)],
            scale.Method.Detection == ScaleDetection.Colorimetric ? Detection.Colorimetric : Detection.Icp,
            scale.Method.Procedure,
            random.Next(20) == 0 ? Basis.Oxide : Basis.Element);
        var rated = new Reading(scale.Analyte, Amount(scale), random.Next(10) > 0 ? scale.Unit : Units[random.Next(Units.Length)], method, "random");
        var others = Others.Where(a => a != scale.Analyte).Select(a => Other(a, scale));
        var depth = scale.Depth ?? (random.Next(2) == 0 ? null : new SampleDepth(Length.Zero, Length.FromInches(random.Next(2, 24))));
        var test = new SoilTest("random", null, null, depth, Textures[random.Next(Textures.Length)], random.Next(8) == 0, random.Next(4) == 0 ? 1.8m : null, [rated, .. others], [])
        {
            Timing = likely ? scale.Timing : null,
        };
        return (test, new RatingContext(likely ? scale.CropGroup : "tomato", likely && scale.SoilGroups.Count > 0 ? scale.SoilGroups[0] : null, likely ? scale.Subregion : null));
    }

    // Half lie within a hundredth of a limit, where a scale can go wrong; now and then one is enormous, absent or open.
    private Amount Amount(RatingScale scale)
    {
        var c = scale.Classes[random.Next(scale.Classes.Count)];
        var limit = c.Upper ?? c.Lower ?? 10m;
        var number = random.Next(20) switch
        {
            < 10 => Math.Max(0, limit + (random.Next(-2, 3) * 0.01m)),
            < 19 => Math.Round(limit * random.Next(0, 4000) / 1000m, random.Next(0, 4)),
            _ => random.Next(2) == 0 ? 0m : 9_999_999.99m,
        };
        return random.Next(30) switch
        {
            0 => Agronomy.SoilTests.Amount.Below(number),
            1 => Agronomy.SoilTests.Amount.Above(number),
            2 => default,
            _ => Agronomy.SoilTests.Amount.Measured(number),
        };
    }

    private Reading Other(Analyte analyte, RatingScale scale)
    {
        var (value, unit) = analyte switch
        {
            Analyte.Ph => (4m + (random.Next(0, 50) / 10m), ReportingUnit.PhUnits),
            Analyte.CationExchangeCapacity => (Cecs[random.Next(Cecs.Length)], ReportingUnit.MilliequivalentsPer100Grams),
            Analyte.OrganicMatter => (random.Next(0, 120) / 10m, ReportingUnit.Percent),
            _ => (random.Next(0, 900) / 1m, ReportingUnit.MilligramsPerKilogram),
        };
        var method = Words.ProceduresOf(analyte) is null ? new Method(scale.Method.Extractant, Detection.Icp, null, Basis.Element) : Method.By(null);
        return new Reading(analyte, Agronomy.SoilTests.Amount.Measured(value), unit, method, "random");
    }
}
