using SoilAdvisor.Agronomy.Climate;
using SoilAdvisor.Api.Http;
using UnitsNet;

namespace SoilAdvisor.Api.Climate;

/// <summary>Words and numbers of climate, in one place for the judge and the reader.</summary>
internal static class ClimateWords
{
    public const int Months = 12;

    public static IReadOnlyDictionary<string, DegreeDayMethod> Methods { get; } = new Dictionary<string, DegreeDayMethod>(StringComparer.Ordinal)
    {
        ["daily-mean"] = DegreeDayMethod.DailyMean,
        ["extremes-raised"] = DegreeDayMethod.ExtremesRaised,
        ["single-sine"] = DegreeDayMethod.SingleSine,
    };

    private static readonly Temperature Coldest = Temperature.FromDegreesFahrenheit(-90);
    private static readonly Temperature Hottest = Temperature.FromDegreesFahrenheit(140);

    public static string WordOf(DegreeDayMethod method) => Methods.First(m => m.Value == method).Key;

    public static bool IsUnit(string? unit) => unit?.Trim() is "F" or "C";

    public static Temperature? Read(WrittenNumber? number, string? unit) => (number?.Number, unit?.Trim()) switch
    {
        ({ } value, "F") => Temperature.FromDegreesFahrenheit((double)value),
        ({ } value, "C") => Temperature.FromDegreesCelsius((double)value),
        _ => null,
    };

    public static bool IsOfThisWorld(Temperature temperature) => temperature.DegreesFahrenheit >= Coldest.DegreesFahrenheit && temperature.DegreesFahrenheit <= Hottest.DegreesFahrenheit;

    public static bool AreOfThisWorld(IReadOnlyList<WrittenNumber>? numbers, string? unit) =>
        !IsUnit(unit) || numbers is null || numbers.All(n => Read(n, unit) is not { } t || IsOfThisWorld(t));
}
