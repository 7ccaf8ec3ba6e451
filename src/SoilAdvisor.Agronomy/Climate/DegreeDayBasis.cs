using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Climate;

/// <summary>What a sum of degree-days means: its base, its cut-off and its method. No sum travels without it.</summary>
/// <param name="Base">Temperature from which growth counts.</param>
/// <param name="CutOff">Temperature above which a warmer day counts no more (horizontal cut-off); above the base; null for none.</param>
/// <param name="Method">How a day is counted.</param>
public sealed record DegreeDayBasis(Temperature Base, Temperature? CutOff, DegreeDayMethod Method)
{
    /// <summary>Base 32 °F without cut-off by the daily mean: the base printed for fall crucifers. Their source names no method; the commonest is taken.</summary>
    public static DegreeDayBasis Crucifers { get; } = new(Temperature.FromDegreesFahrenheit(32), null, DegreeDayMethod.DailyMean);

    /// <summary>In words, for example "base 32 °F, no cut-off, mean of low and high".</summary>
    public string Words => $"base {Degrees(Base)}, {(CutOff is { } most ? $"cut-off {Degrees(most)}" : "no cut-off")}, {MethodWords(Method)}";

    /// <summary>A method in words.</summary>
    /// <param name="method">The method.</param>
    public static string MethodWords(DegreeDayMethod method) => method switch
    {
        DegreeDayMethod.ExtremesRaised => "low and high first raised to the base",
        DegreeDayMethod.SingleSine => "sine through low and high",
        _ => "mean of low and high",
    };

    private static string Degrees(Temperature temperature) => $"{PlainNumber.Of(temperature.DegreesFahrenheit)} °F";
}
