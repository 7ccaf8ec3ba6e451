using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Certification;

/// <summary>Calendar days between two dates, counted as a person does with a calendar that numbers its days.</summary>
public static class IntervalFormulas
{
    /// <summary>Days from working a manure in to the first harvest. Both dates are numbered within their own year, 1 January as 1.</summary>
    public static Formula<(Duration Harvest, Duration WorkedIn, Duration Year), Duration> DaysToHarvest { get; } = new(
        "days-to-harvest",
        "Days from working manure in to the first harvest",
        "D = H − I + Y",
        new Citation("our-arithmetic", "the interval that 7 CFR 205.203(c)(1) asks for, counted on the calendar", Evidence.Ours),
        [
            new(new Symbol("H", "day of the year of the first harvest, 1 January is 1", "days", 1, 366), x => x.Harvest.Days),
            new(new Symbol("I", "day of the year when the manure was worked in", "days", 1, 366), x => x.WorkedIn.Days),
            new(new Symbol("Y", "length of the year of working in when the harvest falls in the next year (365, or 366 in a leap year); 0 in the same year", "days", 0, 366), x => x.Year.Days),
        ],
        new(new Symbol("D", "days to the first harvest", "days"), y => y.Days),
        v => (Duration.FromDays(v[0]), Duration.FromDays(v[1]), Duration.FromDays(v[2])),
        x => x.Harvest - x.WorkedIn + x.Year,
        "Counting on a calendar; the regulation states the days and works no example. Checked against the calendar itself.");
}
