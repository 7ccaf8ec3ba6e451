using UnitsNet;

namespace SoilAdvisor.Agronomy.Climate;

/// <summary>
/// Twelve monthly normals of air temperature, January first. A day between is found on the straight line between the middles of the two months
/// around it. Where only monthly means are known, low and high of a day are both its mean: that is said, and such a sum is too small near the base.
/// </summary>
public sealed class MonthlyNormals
{
    private const int Months = 12;

    private readonly double[] lows;
    private readonly double[] highs;

    private MonthlyNormals(double[] lows, double[] highs, bool hasExtremes) => (this.lows, this.highs, HasExtremes) = (lows, highs, hasExtremes);

    /// <summary>True when monthly lows and highs are known, false for means only.</summary>
    public bool HasExtremes { get; }

    /// <summary>From twelve monthly means. Throws when there are not twelve.</summary>
    /// <param name="means">Mean temperature of each month, January first.</param>
    public static MonthlyNormals OfMeans(IReadOnlyList<Temperature> means)
    {
        var read = Fahrenheit(means);
        return new(read, read, hasExtremes: false);
    }

    /// <summary>From twelve monthly mean lows and highs. Throws when there are not twelve of each, or a low stands above its high.</summary>
    /// <param name="lows">Mean daily low of each month, January first.</param>
    /// <param name="highs">Mean daily high of each month.</param>
    public static MonthlyNormals OfExtremes(IReadOnlyList<Temperature> lows, IReadOnlyList<Temperature> highs)
    {
        var (low, high) = (Fahrenheit(lows), Fahrenheit(highs));
        return Enumerable.Range(0, Months).All(m => low[m] <= high[m])
            ? new(low, high, hasExtremes: true)
            : throw new ArgumentException("A month's low stands above its high.", nameof(lows));
    }

    /// <summary>The normal of a day.</summary>
    /// <param name="day">The day; its year counts only for 29 February.</param>
    public DailyTemperature On(DateOnly day) => new(Between(lows, day), Between(highs, day));

    private static Temperature Between(double[] months, DateOnly day)
    {
        var middle = Middle(day.Year, day.Month);
        var (from, to) = day.DayNumber < middle ? (day.AddMonths(-1), day) : (day, day.AddMonths(1));
        var (start, end) = (Middle(from.Year, from.Month), Middle(to.Year, to.Month));
        var part = (day.DayNumber - start) / (end - start);
        return Temperature.FromDegreesFahrenheit((months[from.Month - 1] * (1 - part)) + (months[to.Month - 1] * part));
    }

    private static double Middle(int year, int month) => new DateOnly(year, month, 1).DayNumber + ((DateTime.DaysInMonth(year, month) - 1) / 2.0);

    private static double[] Fahrenheit(IReadOnlyList<Temperature> months) => months.Count == Months
        ? [.. months.Select(m => m.DegreesFahrenheit)]
        : throw new ArgumentException($"Normals are {Months} months, not {months.Count}.", nameof(months));
}
