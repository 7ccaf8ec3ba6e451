using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>Mean soil temperature of each month, as the farm knows it.</summary>
public sealed class SoilTemperatures
{
    private readonly IReadOnlyList<decimal> monthly;

    private SoilTemperatures(IReadOnlyList<decimal> monthly) => this.monthly = monthly;

    /// <summary>From twelve means, January first, °C.</summary>
    /// <param name="celsius">Twelve temperatures from -30 to 50 °C.</param>
    /// <returns>The temperatures, or a refusal soil-temperature-count or soil-temperature-range.</returns>
    public static Answer<SoilTemperatures> Of(IReadOnlyList<decimal> celsius)
    {
        if (celsius.Count != 12)
        {
            return Answer<SoilTemperatures>.Refused("soil-temperature-count", $"There are {celsius.Count} soil temperatures; a year has 12 months.", "Give twelve monthly means, January first.");
        }

        return celsius.All(t => t is >= -30 and <= 50)
            ? Answer<SoilTemperatures>.Given(new SoilTemperatures([.. celsius]))
            : Answer<SoilTemperatures>.Refused("soil-temperature-range", "A soil temperature lies outside -30 to 50 °C (-22 to 122 °F).", "Check the numbers and their unit.");
    }

    /// <summary>Mean from one day to another, by the days in each month.</summary>
    /// <param name="from">First day.</param>
    /// <param name="to">Last day; not before the first.</param>
    public decimal Mean(DateOnly from, DateOnly to)
    {
        var (sum, days) = (0m, 0);
        for (var month = new DateOnly(from.Year, from.Month, 1); month <= to; month = month.AddMonths(1))
        {
            var (first, last) = (month < from ? from : month, month.AddMonths(1).AddDays(-1) is var end && end < to ? end : to);
            var inMonth = last.DayNumber - first.DayNumber + 1;
            (sum, days) = (sum + (monthly[month.Month - 1] * inMonth), days + inMonth);
        }

        return days == 0 ? monthly[from.Month - 1] : sum / days;
    }
}
