using SoilAdvisor.Agronomy.Climate;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using Temperature = UnitsNet.Temperature;

namespace SoilAdvisor.Api.Climate;

/// <summary>Writes degree-days out, never without their basis.</summary>
internal static class ClimateWriter
{
    public static DegreeDaysAnswer? Write(DegreeDaySum? sum, Calculation calculation)
    {
        if (sum is null)
        {
            return null;
        }

        var metric = calculation.Units.Metric;
        decimal Days(DegreeDays days) => Units.Rounded(metric ? days.CelsiusDays : days.FahrenheitDays);
        Quantity Degrees(Temperature t) => metric ? new Quantity(Units.Rounded(t.DegreesCelsius), "C") : new Quantity(Units.Rounded(t.DegreesFahrenheit), "F");
        var source = sum.Basis.Method == DegreeDayMethod.SingleSine ? DegreeDayFormulas.SingleSine.Source : DegreeDayFormulas.DailyMean.Source;
        return new DegreeDaysAnswer(
            Days(sum.Sum),
            metric ? "C days" : "F days",
            Degrees(sum.Basis.Base),
            sum.Basis.CutOff is { } most ? Degrees(most) : null,
            ClimateWords.WordOf(sum.Basis.Method),
            Dates.Write(sum.From),
            Dates.Write(sum.To),
            sum.GivenDays,
            sum.To.DayNumber - sum.From.DayNumber - sum.GivenDays,
            [.. sum.ByMethod.Select(m => new MethodSum(ClimateWords.WordOf(m.Method), Days(m.Sum)))],
            calculation.Cite(source));
    }
}
