using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Climate;

/// <summary>
/// Degree-days of one day and their sum over a span. With a cut-off, what a day gains above the cut-off is taken off again: that holds for each of
/// the methods and is called a horizontal cut-off.
/// </summary>
public static class DegreeDayFormulas
{
    private static readonly Citation TwoInterpretations = new("cc47", "abstract", Evidence.Seen);

    /// <summary>Method 1 of McMaster and Wilhelm 1997.</summary>
    public static Formula<(Temperature Low, Temperature High, Temperature Base), DegreeDays> DailyMean { get; } = new(
        "degree-days-daily-mean",
        "Degree-days of a day from the mean of low and high",
        "D = max((H + L) / 2 − B, 0)",
        TwoInterpretations,
        Extremes(),
        Result(),
        Build,
        x => DegreeDays.FromFahrenheitDays(Math.Max(((x.High.DegreesFahrenheit + x.Low.DegreesFahrenheit) / 2) - x.Base.DegreesFahrenheit, 0)),
        "The abstract prints the equation without a worked day.");

    /// <summary>Method 2 of McMaster and Wilhelm 1997.</summary>
    public static Formula<(Temperature Low, Temperature High, Temperature Base), DegreeDays> ExtremesRaised { get; } = new(
        "degree-days-extremes-raised",
        "Degree-days of a day, low and high first raised to the base",
        "D = (max(H, B) + max(L, B)) / 2 − B",
        TwoInterpretations,
        Extremes(),
        Result(),
        Build,
        x => DegreeDays.FromFahrenheitDays((Above(x.High, x.Base) + Above(x.Low, x.Base)) / 2),
        "The abstract prints the equation without a worked day.");

    /// <summary>Area above the base under a sine through low and high (Baskerville and Emin 1969).</summary>
    public static Formula<(Temperature Mean, TemperatureDelta Swing, Temperature Base), DegreeDays> SingleSine { get; } = new(
        "degree-days-single-sine",
        "Degree-days of a day under a sine through low and high",
        "D = ((M − B) × arccos(max(min((B − M) / W, 1), −1)) + W × √(1 − max(min((B − M) / W, 1), −1)²)) / π",
        new Citation("baskerville-emin-1969", null, Evidence.FromMemory),
        [
            new(new Symbol("M", "mean of low and high", "°F", -100, 150), x => x.Mean.DegreesFahrenheit),
            new(new Symbol("W", "half the difference between high and low", "°F", 0.001, 100), x => x.Swing.DegreesFahrenheit),
            new(new Symbol("B", "base temperature", "°F", -100, 150), x => x.Base.DegreesFahrenheit),
        ],
        Result(),
        v => (Temperature.FromDegreesFahrenheit(v[0]), TemperatureDelta.FromDegreesFahrenheit(v[1]), Temperature.FromDegreesFahrenheit(v[2])),
        Sine,
        "No printed day was read; the tests integrate the sine numerically instead.");

    /// <summary>Degree-days of one day.</summary>
    /// <param name="day">Its low and high.</param>
    /// <param name="basis">Base, cut-off and method.</param>
    public static DegreeDays OfDay(DailyTemperature day, DegreeDayBasis basis)
    {
        var above = Of(day, basis.Base, basis.Method).FahrenheitDays;
        var lost = basis.CutOff is { } most ? Of(day, most, basis.Method).FahrenheitDays : 0;
        return DegreeDays.FromFahrenheitDays(Math.Max(above - lost, 0));
    }

    /// <summary>Degree-days from one day up to, not including, another; null when a day has no temperature.</summary>
    /// <param name="from">First day counted.</param>
    /// <param name="to">First day no longer counted.</param>
    /// <param name="temperatures">The days.</param>
    /// <param name="basis">Base, cut-off and method.</param>
    public static DegreeDaySum? Over(DateOnly from, DateOnly to, Temperatures temperatures, DegreeDayBasis basis)
    {
        var days = Enumerable.Range(from.DayNumber, Math.Max(to.DayNumber - from.DayNumber, 0)).Select(DateOnly.FromDayNumber).ToList();
        if (days.Any(d => temperatures.On(d) is null))
        {
            return null;
        }

        DegreeDays By(DegreeDayMethod method) =>
            days.Aggregate(default(DegreeDays), (sum, d) => sum + OfDay(temperatures.On(d)!, basis with { Method = method }));
        var given = days.Count(temperatures.Given.ContainsKey);
        return new DegreeDaySum(
            By(basis.Method), basis, from, to, given, given == days.Count || temperatures.Normals is { HasExtremes: true }, [.. Enum.GetValues<DegreeDayMethod>().Select(m => (m, By(m)))]);
    }

    private static DegreeDays Of(DailyTemperature day, Temperature floor, DegreeDayMethod method)
    {
        var swing = TemperatureDelta.FromDegreesFahrenheit((day.High.DegreesFahrenheit - day.Low.DegreesFahrenheit) / 2);
        return method switch
        {
            DegreeDayMethod.ExtremesRaised => ExtremesRaised.Of((day.Low, day.High, floor)),
            DegreeDayMethod.SingleSine when swing.DegreesFahrenheit > 0.001 => SingleSine.Of((day.Mean, swing, floor)),
            _ => DailyMean.Of((day.Low, day.High, floor)),
        };
    }

    private static DegreeDays Sine((Temperature Mean, TemperatureDelta Swing, Temperature Base) x)
    {
        var (mean, swing, floor) = (x.Mean.DegreesFahrenheit, x.Swing.DegreesFahrenheit, x.Base.DegreesFahrenheit);
        var part = Math.Max(Math.Min((floor - mean) / swing, 1), -1);
        return DegreeDays.FromFahrenheitDays(Math.Max((((mean - floor) * Math.Acos(part)) + (swing * Math.Sqrt(1 - (part * part)))) / Math.PI, 0));
    }

    private static double Above(Temperature temperature, Temperature floor) => Math.Max(temperature.DegreesFahrenheit - floor.DegreesFahrenheit, 0);

    private static FormulaInput<(Temperature Low, Temperature High, Temperature Base)>[] Extremes() =>
    [
        new(new Symbol("L", "low of the day", "°F", -100, 150), x => x.Low.DegreesFahrenheit),
        new(new Symbol("H", "high of the day", "°F", -100, 150), x => x.High.DegreesFahrenheit),
        new(new Symbol("B", "base temperature", "°F", -100, 150), x => x.Base.DegreesFahrenheit),
    ];

    private static FormulaOutput<DegreeDays> Result() => new(new Symbol("D", "degree-days of the day", "°F days"), y => y.FahrenheitDays);

    private static (Temperature Low, Temperature High, Temperature Base) Build(double[] v) =>
        (Temperature.FromDegreesFahrenheit(v[0]), Temperature.FromDegreesFahrenheit(v[1]), Temperature.FromDegreesFahrenheit(v[2]));
}
