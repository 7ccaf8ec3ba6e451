using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Composting;

/// <summary>The log of a heap's temperature, one figure a day.</summary>
public static class TemperatureLogFormulas
{
    /// <summary>Longest log that is counted in one line.</summary>
    public const int MostDays = 60;

    /// <summary>
    /// Days of a log that lie from 131 to 170 °F, both ends included. A day that was not measured is no day of this count: the rule then
    /// cannot be decided. Whether the days suffice depends on the kind of heap and on its turnings, and is the certifier's to say.
    /// </summary>
    public static SeriesFormula<Temperature, Duration> DaysInHeat { get; } = new(3, MostDays, n => new(
        "compost-days-in-heat",
        "Days of a temperature log from 131 to 170 °F",
        $"D = {string.Join(" + ", Enumerable.Range(1, n).Select(i => $"[131 ≤ T{i} ≤ 170]"))}",
        new Citation("cfr205-203", "(c)(2)(ii)", Evidence.Seen),
        [.. Enumerable.Range(1, n).Select(i => new FormulaInput<IReadOnlyList<Temperature>>(new Symbol($"T{i}", $"temperature of day {i}", "°F", 0, 212), x => x[i - 1].DegreesFahrenheit))],
        new(new Symbol("D", "days in the heat", "days"), y => y.Days),
        v => [.. v.Select(t => Temperature.FromDegreesFahrenheit(t))],
        x => Duration.FromDays(x.Count(t => t.DegreesFahrenheit is >= 131 and <= 170)),
        "The regulation states the limits and works no example; a bracket counts 1 where it holds and 0 where it does not."));
}
