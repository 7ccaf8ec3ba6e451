using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>Splits a rate by the largest published single dose that fits the ground.</summary>
public static class LimeDosing
{
    // Ash caps are printed for a year, limestone is split at half-years where nothing else is printed.
    private const int MonthsForAsh = 12;
    private const int UsualMonths = 6;

    // A cap counts for a whole plan, hence for a year.
    private const int MonthsForCap = 12;

    // A rate that equals the limit but for the last bit of a double is one dose, not two.
    private const double Bit = 1e-9;

    /// <summary>
    /// The doses. The limit of the farm's own region goes first, then that for beds, then the first for fields; where the material's largest
    /// single rate is smaller, that. Doses are equal.
    /// </summary>
    /// <param name="rate">The stone as spread; above zero.</param>
    /// <param name="offered">The stone.</param>
    /// <param name="ground">Where it is spread.</param>
    /// <param name="limits">Published limits.</param>
    public static LimeDoses For(MassPerArea rate, OfferedMaterial offered, LimeGround ground, IReadOnlyList<DoseLimit> limits)
    {
        var value = MassShare.FromFraction(offered.Analysis.Share(Nutrient.CalciumCarbonate));
        var limit = Fitting(ground, limits);
        var cap = offered.TightestCap is { } tightest && tightest.Most < offered.LargestSingleRate ? tightest : null;
        var own = cap?.Most ?? offered.LargestSingleRate;
        if (limit is not null && limit.Of(value) > own)
        {
            limit = null;
        }

        var largest = limit?.Of(value) ?? own;
        var count = Math.Max(1, (int)Math.Ceiling((rate.PoundsPerAcre / largest.PoundsPerAcre) - Bit));
        var usual = cap is null ? MonthsOf(offered) : MonthsForCap;
        var (monthsFrom, monthsTo) = limit is null ? (usual, usual) : (limit.MonthsFrom, limit.MonthsTo);
        var each = rate * (1.0 / count);
        return new LimeDoses(
            [.. Enumerable.Range(0, count).Select(i => new LimeDose(
                each,
                ground.Area is { } area ? each.On(area) : null,
                i == 0 ? 0 : monthsFrom * i,
                i == 0 ? 0 : monthsTo * i,
                i == 0 ? ground.Start : monthsFrom is { } wait ? ground.Start?.AddMonths(wait * i) : null))],
            limit,
            Say(count, each, limit is { } used ? $"{used.Title}: at most {Printed(used)} in one dose" : Own(offered, largest, cap), monthsFrom, monthsTo),
            limit?.Source ?? cap?.Source ?? OwnSource(offered));
    }

    private static DoseLimit? Fitting(LimeGround ground, IReadOnlyList<DoseLimit> limits) => limits
        .Where(l => l.OnSurface == ground.OnSurface && l.Ground is "beds" or "field" || (l.OnSurface == ground.OnSurface && l.Ground == "grassland" && l.Region == ground.Region))
        .Where(l => l.SoilGroups.Count == 0 || (l.Region == ground.Region && ground.SoilGroup is { } soil && l.SoilGroups.Contains(soil)))
        .OrderBy(l => l.Region is not null && l.Region == ground.Region ? 0 : 1)
        .ThenBy(l => l.Ground == "beds" ? 0 : 1)
        .FirstOrDefault();

    private static int MonthsOf(OfferedMaterial offered) => offered.Analysis.Share(Nutrient.K2O) > 0 ? MonthsForAsh : UsualMonths;

    private static Citation OwnSource(OfferedMaterial offered) => offered.Material.ValueOf("largest-single-rate")?.Source ?? offered.Material.Source;

    private static string Own(OfferedMaterial offered, MassPerArea largest, RateCap? cap) =>
        $"at most {PlainNumber.Of(largest.PoundsPerAcre)} lb/acre of {offered.Material.Name} in one dose{(cap is null ? "" : $": {cap.Reason}")}";

    private static string Say(int count, MassPerArea each, string by, int? monthsFrom, int? monthsTo) => count == 1
        ? $"One dose ({by})."
        : $"Split into {count} doses of {PlainNumber.Of(each.PoundsPerAcre)} lb/acre ({PlainNumber.Of(each.PoundsPer1000SquareFeet)} lb per 1000 sq ft), {Apart(monthsFrom, monthsTo)} ({by}). Test the soil again before the last.";

    private static string Printed(DoseLimit limit) => limit.Unit switch
    {
        "lb/100-sq-ft" => $"{PlainNumber.Of(limit.Largest)} lb per 100 sq ft",
        "lb/1000-sq-ft" => $"{PlainNumber.Of(limit.Largest)} lb per 1000 sq ft",
        "t-cao/ha" => $"{PlainNumber.Of(limit.Largest)} t/ha counted as calcium oxide",
        _ => $"{PlainNumber.Of(limit.Largest)} {limit.Unit}",
    };

    private static string Apart(int? from, int? to) => (from, to) switch
    {
        (null, _) => "each after a new soil test",
        (0, _) => "half plowed down and half worked into the surface",
        (6, 6) => "six months apart",
        (12, 12) => "a year apart",
        (24, 36) => "two to three years apart",
        ({ } low, { } high) when low == high => Invariant($"{low} months apart"),
        _ => Invariant($"{from} to {to} months apart"),
    };
}
