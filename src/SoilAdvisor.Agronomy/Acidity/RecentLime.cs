using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Lime of the past year that the soil test does not show yet.</summary>
/// <param name="Amount">Limestone spread; above zero.</param>
/// <param name="Spread">Day it was spread.</param>
/// <param name="SoilClass">Class of the soil as the North Carolina laboratory prints it; null when not said.</param>
public sealed record RecentLime(MassPerArea Amount, DateOnly Spread, HumicSoilClass? SoilClass)
{
    /// <summary>Months between spreading and a day: whole months and the part of the next, never below zero.</summary>
    /// <param name="sampled">The day, normally that of sampling.</param>
    public double MonthsUntil(DateOnly sampled)
    {
        if (sampled <= Spread)
        {
            return 0;
        }

        var whole = ((sampled.Year - Spread.Year) * 12) + sampled.Month - Spread.Month;
        if (Spread.AddMonths(whole) > sampled)
        {
            whole--;
        }

        var since = Spread.AddMonths(whole);
        return whole + ((double)(sampled.DayNumber - since.DayNumber) / (Spread.AddMonths(whole + 1).DayNumber - since.DayNumber));
    }
}
