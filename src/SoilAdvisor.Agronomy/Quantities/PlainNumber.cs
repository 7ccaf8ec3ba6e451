using System.Globalization;

namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>A number as it stands in a sentence: three figures below a thousand, whole above, never an exponent.</summary>
internal static class PlainNumber
{
    public static string Of(double value)
    {
        var size = Math.Abs(value);
        var decimals = size is 0 or >= 100 ? 0 : Math.Clamp(2 - (int)Math.Floor(Math.Log10(size)), 0, 6);
        return Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString("#,0.######", CultureInfo.InvariantCulture);
    }

    public static string Of(decimal value) => value.ToString("#,0.######", CultureInfo.InvariantCulture);

    /// <summary>"35 to 40", or one number where both ends print alike.</summary>
    public static string Range(double low, double high) => Of(low) == Of(high) ? Of(low) : $"{Of(low)} to {Of(high)}";

    /// <summary>"15 May".</summary>
    public static string DayOfYear(DateOnly day) => day.ToString("d MMMM", CultureInfo.InvariantCulture);

    public static string Date(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
}
