using SoilAdvisor.Agronomy.Climate;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;
using UnitsNet;

namespace SoilAdvisor.Api.Climate;

/// <summary>From a climate that the validator has judged to types.</summary>
internal static class ClimateReader
{
    /// <summary>The climate with its frost dates, whichever of the two members gave them.</summary>
    public static FarmClimate Read(WrittenClimate? written, WrittenFrost? frost, string? region)
    {
        var spring = Dates.Read(written?.LastFrost) ?? Dates.Read(frost?.LastSpring);
        var fall = Dates.Read(written?.FirstFrost) ?? Dates.Read(frost?.FirstFall);
        return new FarmClimate(
            spring is null && fall is null ? null : new FrostDates(spring, fall),
            TemperaturesOf(written),
            HardinessZone.Read(written?.HardinessZone),
            region?.Trim(),
            BasisOf(written?.DegreeDays));
    }

    private static Temperatures? TemperaturesOf(WrittenClimate? written)
    {
        var normals = written switch
        {
            { MonthlyLowTemperature: { } lows, MonthlyHighTemperature: { } highs } => MonthlyNormals.OfExtremes(Months(lows), Months(highs)),
            { MonthlyMeanTemperature: { } means } => MonthlyNormals.OfMeans(Months(means)),
            _ => null,
        };
        var days = DaysOf(written?.Daily);
        return normals is null && days.Count == 0 ? null : new Temperatures(normals, days);
    }

    private static Dictionary<DateOnly, DailyTemperature> DaysOf(WrittenDays? written)
    {
        var days = new Dictionary<DateOnly, DailyTemperature>();
        if (written is { Lows: { } lows, Highs: { } highs, Unit: { } unit } && Dates.Read(written.From) is { } first)
        {
            for (var i = 0; i < lows.Count; i++)
            {
                days.Add(first.AddDays(i), new DailyTemperature(ClimateWords.Read(lows[i], unit)!.Value, ClimateWords.Read(highs[i], unit)!.Value));
            }
        }

        return days;
    }

    private static DegreeDayBasis BasisOf(WrittenDegreeDays? written) => written is null
        ? DegreeDayBasis.Crucifers
        : new DegreeDayBasis(
            ClimateWords.Read(written.Base?.Value, written.Base?.Unit) ?? DegreeDayBasis.Crucifers.Base,
            ClimateWords.Read(written.CutOff?.Value, written.CutOff?.Unit),
            written.Method is { } method ? ClimateWords.Methods[method] : DegreeDayMethod.DailyMean);

    private static IReadOnlyList<Temperature> Months(WrittenMonths written) => [.. written.Values!.Select(n => ClimateWords.Read(n, written.Unit)!.Value)];
}
