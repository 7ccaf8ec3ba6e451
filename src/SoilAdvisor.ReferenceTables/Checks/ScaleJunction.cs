using SoilAdvisor.ReferenceTables.Guides;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>How two neighbouring classes of a scale meet.</summary>
/// <param name="Scale">The scale.</param>
/// <param name="Lower">The lower class.</param>
/// <param name="Higher">The class after it.</param>
/// <param name="Cec">Exchange capacity at which it was looked at, meq/100 g; null when no limit depends on it.</param>
/// <param name="Distance">Above zero for a gap, below zero for an overlap, zero where they meet.</param>
internal sealed record ScaleJunction(ScaleRows Scale, TableRow Lower, TableRow Higher, decimal? Cec, decimal Distance)
{
    // Limits are straight lines in the exchange capacity: a sand, a light loam and a clay show whether they cross.
    private static readonly decimal?[] SlopedCecs = [0, 5, 20];
    private static readonly decimal?[] NoCec = [null];

    public string AtCec => Cec is { } cec ? string.Create(CultureInfo.InvariantCulture, $" at a cec of {cec} meq/100g") : "";

    public static IEnumerable<ScaleJunction> Of(TableFolder folder) =>
        from table in folder.TablesOf(RowKinds.Ratings)
        from scale in ScaleRows.Of(table)
        from pair in scale.Rows.Zip(scale.Rows.Skip(1))
        where pair.First.Number("upper") is not null && pair.Second.Number("lower") is not null
        from cec in CecsOf(scale)
        select new ScaleJunction(scale, pair.First, pair.Second, cec, DistanceOf(scale, pair.First, pair.Second, cec ?? 0));

    public static IEnumerable<decimal?> CecsOf(ScaleRows scale) =>
        scale.Rows.Any(r => r["lower_per_cec"] is not null || r["upper_per_cec"] is not null) ? SlopedCecs : NoCec;

    /// <summary>A limit at an exchange capacity; null when it is open.</summary>
    public static decimal? LimitOf(TableRow row, string side, decimal cec) => row.Number(side) + ((row.Number($"{side}_per_cec") ?? 0) * cec);

    private static decimal DistanceOf(ScaleRows scale, TableRow lowerClass, TableRow higherClass, decimal cec)
    {
        var (upper, lower) = (LimitOf(lowerClass, "upper", cec)!.Value, LimitOf(higherClass, "lower", cec)!.Value);
        var (upperIncluded, lowerIncluded) = (lowerClass["upper_included"] == "yes", higherClass["lower_included"] == "yes");
        if (scale.PrintedDecimals is { } decimals)
        {
            // In steps of the last printed decimal the classes meet when exactly one step lies between the last of one and the first of the next.
            var steps = 1m;
            for (var i = 0; i < decimals; i++)
            {
                steps *= 10;
            }
            var last = upperIncluded ? decimal.Floor(upper * steps) : decimal.Ceiling(upper * steps) - 1;
            var first = lowerIncluded ? decimal.Ceiling(lower * steps) : decimal.Floor(lower * steps) + 1;
            return (first - last - 1) / steps;
        }
        if (upper != lower)
        {
            return lower - upper;
        }
        return (upperIncluded, lowerIncluded) switch
        {
            (true, true) => decimal.MinusOne,
            (false, false) => decimal.One,
            _ => decimal.Zero,
        };
    }
}
