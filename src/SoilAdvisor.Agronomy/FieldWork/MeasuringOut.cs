using SoilAdvisor.Agronomy.Materials;
using UnitsNet;

namespace SoilAdvisor.Agronomy.FieldWork;

/// <summary>
/// Rounds a planned amount to what a person measures: the nearest that keeps within its limits. Rounding never takes an amount over the
/// most that may be spread.
/// </summary>
public static class MeasuringOut
{
    // Buckets are offered only where they come this near to the amount (our limit); else it is weighed.
    private const double MostOffByVolume = 0.05;

    // The last bits of a sum are not a limit passed.
    private const double Rounding = 1e-9;

    /// <summary>The amount as it is measured.</summary>
    /// <param name="planned">Planned amount; above zero.</param>
    /// <param name="least">Least that may be spread; at most the planned amount.</param>
    /// <param name="most">Most that may be spread; at least the planned amount.</param>
    /// <param name="density">Published density; null where there is none: then it is weighed.</param>
    /// <param name="measures">Bucket, scoop and scale.</param>
    public static MeasuredAmount For(Mass planned, Mass least, Mass most, BulkDensity? density, FieldMeasures measures)
    {
        if (density is not null && Nearest(ByVolume(planned, density, measures), planned, least, most) is { } volume && Math.Abs(volume.Change) <= MostOffByVolume)
        {
            return volume;
        }

        var mark = measures.MarkFor(planned);
        var marks = Math.Floor(planned / mark);
        return Nearest(
            new[] { marks, marks + 1 }.Select(n => new MeasuredAmount(planned, mark * n, MeasuringWay.ToScaleMark, 0, 0, null)), planned, least, most)
            ?? new MeasuredAmount(planned, planned, MeasuringWay.Exactly, 0, 0, null);
    }

    private static MeasuredAmount? Nearest(IEnumerable<MeasuredAmount> ways, Mass planned, Mass least, Mass most) => ways
        .Where(w => w.Measured.Kilograms > 0
            && w.Measured.Kilograms <= Math.Max(most.Kilograms, planned.Kilograms) * (1 + Rounding)
            && w.Measured.Kilograms >= Math.Min(least.Kilograms, planned.Kilograms) * (1 - Rounding))
        .OrderBy(w => Math.Round(Math.Abs(w.Change), 9))
        .ThenBy(w => w.HalfBuckets + w.QuarterScoops)
        .FirstOrDefault();

    private static IEnumerable<MeasuredAmount> ByVolume(Mass planned, BulkDensity density, FieldMeasures measures)
    {
        var (half, quarter) = (density.MassOf(measures.Bucket) / 2, measures.Scoop is { } scoop ? density.MassOf(scoop) / 4 : (Mass?)null);
        var buckets = Math.Floor(planned / half);
        // More than this cannot be counted in buckets.
        if (buckets >= 1000)
        {
            yield break;
        }

        foreach (var h in new[] { (int)buckets, (int)buckets + 1 })
        {
            var rest = planned - (half * h);
            var scoops = quarter is { } q && rest.Kilograms > 0 ? (int)Math.Min(1000, Math.Floor(rest / q)) : 0;
            foreach (var s in quarter is null ? [0] : new[] { scoops, scoops + 1 })
            {
                yield return new MeasuredAmount(planned, (half * h) + ((quarter ?? default) * s), MeasuringWay.ByVolume, h, s, density);
            }
        }
    }
}
