namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>
/// The kernel: limits of a scale ready for comparison. A class holds every value from its start up to, and without, its end. Where a guide prints
/// whole steps, start and end lie half a step outside the printed limits, so that no value is rounded. Allocates nothing for a value.
/// </summary>
internal sealed class ClassLimits
{
    private const double Scale = 1e9;

    private readonly double[] starts;
    private readonly double[] ends;
    private readonly double[]? startsPerCec;
    private readonly double[] endsPerCec;

    public ClassLimits(IReadOnlyList<RatingClass> classes, int? printedDecimals)
    {
        starts = [.. classes.Select((c, i) => i == 0 && c is { Lower: 0, LowerPerCec: 0 } ? double.NegativeInfinity : StartOf(c, printedDecimals))];
        ends = [.. classes.Select(c => EndOf(c, printedDecimals))];
        endsPerCec = [.. classes.Select(c => (double)c.UpperPerCec)];
        startsPerCec = classes.Any(c => c.LowerPerCec != 0 || c.UpperPerCec != 0) ? [.. classes.Select(c => (double)c.LowerPerCec)] : null;
        if (startsPerCec is not null && printedDecimals is not null)
        {
            throw new ArgumentException("Limits that move with the exchange capacity are not printed in whole steps.", nameof(printedDecimals));
        }
    }

    /// <summary>True when a limit moves with the exchange capacity.</summary>
    public bool AreSloped => startsPerCec is not null;

    /// <summary>Index of the class that holds the value; -1 when none does.</summary>
    public int IndexOf(double value, double cec)
    {
        if (startsPerCec is not null)
        {
            return IndexOnSlopes(value, cec);
        }

        var ends = this.ends;
        for (var i = 0; i < ends.Length; i++)
        {
            if (value < ends[i])
            {
                return value >= starts[i] ? i : -1;
            }
        }

        return -1;
    }

    private int IndexOnSlopes(double value, double cec)
    {
        for (var i = 0; i < ends.Length; i++)
        {
            if (value < At(ends[i], endsPerCec[i], cec))
            {
                return value >= At(starts[i], startsPerCec![i], cec) ? i : -1;
            }
        }

        return -1;
    }

    // Back to nine decimals, so that 75 + 2.5 x 8.1 is the number that a laboratory would print; an end that belongs to its class keeps lying just beyond.
    private static double At(double limit, double perCec, double cec)
    {
        if (perCec == 0)
        {
            return limit;
        }

        var printed = Math.Round(limit * Scale) / Scale;
        var moved = Math.Round((printed + (perCec * cec)) * Scale) / Scale;
        return limit > printed ? Math.BitIncrement(moved) : moved;
    }

    private static double StartOf(RatingClass c, int? decimals)
    {
        if (c.Lower is not { } lower)
        {
            return double.NegativeInfinity;
        }

        if (decimals is { } d)
        {
            var step = Step(d);
            return ScaleValue.ToDouble(((c.LowerIncluded ? decimal.Ceiling(lower / step) : decimal.Floor(lower / step) + 1) * step) - (step / 2));
        }

        return c.LowerIncluded ? ScaleValue.ToDouble(lower) : Math.BitIncrement(ScaleValue.ToDouble(lower));
    }

    private static double EndOf(RatingClass c, int? decimals)
    {
        if (c.Upper is not { } upper)
        {
            return double.PositiveInfinity;
        }

        if (decimals is { } d)
        {
            var step = Step(d);
            return ScaleValue.ToDouble(((c.UpperIncluded ? decimal.Floor(upper / step) : decimal.Ceiling(upper / step) - 1) * step) + (step / 2));
        }

        return c.UpperIncluded ? Math.BitIncrement(ScaleValue.ToDouble(upper)) : ScaleValue.ToDouble(upper);
    }

    private static decimal Step(int decimals) => new(1, 0, 0, false, (byte)decimals);
}
