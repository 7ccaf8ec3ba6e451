using System.Globalization;
using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>Amounts as a grower reads them: rounded for the scale, always with their unit.</summary>
internal static class Figures
{
    private const decimal OuncesInPound = 16;
    private const int Digits = 3;

    // From here on a quarter of a measure is at most 3 percent.
    private const decimal ManyMeasures = 4;

    /// <summary>A weight: pounds and ounces, or kilograms and grams.</summary>
    public static string Weight(JsonElement quantity)
    {
        if (!Read(quantity, out var value, out var unit))
        {
            return "";
        }

        if (value == 0)
        {
            return "none";
        }

        if (unit == "lb" && value < 100)
        {
            var ounces = decimal.Round(value * OuncesInPound, MidpointRounding.AwayFromZero);
            return ounces >= OuncesInPound
                ? ounces % OuncesInPound == 0 ? Text($"{ounces / OuncesInPound:0} lb") : Text($"{decimal.Floor(ounces / OuncesInPound):0} lb {ounces % OuncesInPound:0} oz")
                : Text($"{decimal.Round(value * OuncesInPound, 1, MidpointRounding.AwayFromZero):0.#} oz");
        }

        return unit == "kg" && value < 1 ? Text($"{value * 1000:0} g") : Amount(quantity);
    }

    /// <summary>An amount to three digits.</summary>
    public static string Amount(JsonElement quantity) => Read(quantity, out var value, out var unit) ? $"{Rounded(value)} {unit}".TrimEnd() : "";

    /// <summary>An amount to three digits, where the heading names the unit.</summary>
    public static string Number(JsonElement quantity) => Read(quantity, out var value, out _) ? Rounded(value) : "";

    /// <summary>A bare number, such as a percentage, to three digits.</summary>
    public static string Share(JsonElement number) => number.TryGetDecimalOf(out var value) ? Rounded(value) : "";

    /// <summary>Whether it is nothing.</summary>
    public static bool IsZero(JsonElement quantity) => Read(quantity, out var value, out _) && value == 0;

    /// <summary>Whether it is worth mentioning: 1 or more in its unit.</summary>
    public static bool IsAtLeastOne(JsonElement quantity) => Read(quantity, out var value, out _) && value >= 1;

    /// <summary>A range; one number where both ends are the same.</summary>
    public static string Range(JsonElement range)
    {
        if (!range.At("low").TryGetDecimalOf(out var low) || !range.At("high").TryGetDecimalOf(out var high))
        {
            return "";
        }

        return low == high ? Rounded(low) : $"{Rounded(low)} to {Rounded(high)}";
    }

    /// <summary>Money.</summary>
    public static string Money(JsonElement money) => money.At("value").TryGetDecimalOf(out var value) ? Text($"{value:#,0.00} {money.Text("currency")}") : "";

    /// <summary>A volume: quarters of the measure where that is exact enough, else two digits.</summary>
    public static string Measure(JsonElement volume)
    {
        if (!Read(volume, out var value, out var unit) || value == 0)
        {
            return "weigh it";
        }

        var shown = value >= ManyMeasures
            ? (decimal.Round(value * 4, MidpointRounding.AwayFromZero) / 4).ToString("#,0.##", CultureInfo.InvariantCulture)
            : Rounded(value, 2);
        return $"{shown} {(value > 1 ? Plural(unit) : unit.Replace('-', ' '))}";
    }

    private static string Plural(string unit) => unit switch
    {
        "cubic-foot" => "cubic feet",
        _ => unit.Replace('-', ' ') + "s",
    };

    private static bool Read(JsonElement quantity, out decimal value, out string unit)
    {
        unit = quantity.Text("unit") ?? "";
        return quantity.At("value").TryGetDecimalOf(out value);
    }

    private static bool TryGetDecimalOf(this JsonElement number, out decimal value)
    {
        value = 0;
        return number.ValueKind == JsonValueKind.Number && number.TryGetDecimal(out value);
    }

    private static string Rounded(decimal value, int digits = Digits)
    {
        if (value == 0)
        {
            return "0";
        }

        var decimals = digits - 1 - (int)Math.Floor(Math.Log10((double)Math.Abs(value)));
        return decimals >= 0
            ? decimal.Round(value, Math.Min(decimals, 28), MidpointRounding.AwayFromZero).ToString("#,0.############", CultureInfo.InvariantCulture)
            : decimal.Round(value, MidpointRounding.AwayFromZero).ToString("#,0", CultureInfo.InvariantCulture);
    }

    private static string Text(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
}
