using SoilAdvisor.Agronomy.Acidity.Stones;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>How long lime takes, and when to test again.</summary>
/// <param name="MonthsFrom">Months until it acts, at least.</param>
/// <param name="MonthsTo">Months until it has acted, at most.</param>
/// <param name="Retest">Earliest day of a new soil test; null when the days of spreading are not known.</param>
/// <param name="Said">In one or two sentences.</param>
/// <param name="Source">Where the months stand.</param>
public sealed record LimeTiming(int MonthsFrom, int MonthsTo, DateOnly? Retest, string Said, Citation Source)
{
    /// <summary>For lime that is spread; null where the tables hold no months.</summary>
    /// <param name="tables">Published figures.</param>
    /// <param name="doses">The doses; the last one sets the new test.</param>
    public static LimeTiming? Of(LimingTables tables, LimeDoses? doses)
    {
        if (tables.FigureOf("limestone", "months-to-react") is not { Low: { } low, High: { } high } figure)
        {
            return null;
        }

        var retest = doses?.Each[^1].Date?.AddMonths((int)high);
        var effect = tables.FigureOf("limestone", "years-of-effect") is { Low: { } years, High: { } mostYears } ? Invariant($" Its effect lasts {years} to {mostYears} years: do not lime every year.") : "";
        return new LimeTiming(
            (int)low,
            (int)high,
            retest,
            Invariant($"Lime takes {low} to {high} months to act, ash less. Test again {high} months after the last dose{(retest is { } day ? Invariant($", from {day:yyyy-MM-dd}") : "")}, before any more.{effect}"),
            figure.Source);
    }
}
