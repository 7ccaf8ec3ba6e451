using System.Globalization;

namespace SoilAdvisor.Reports.Wording;

/// <summary>A number in print: rounded to so many significant digits, point as decimal mark, never an exponent between 1e-12 and 1e15.</summary>
internal static class Figure
{
    private const string Plain = "0.############################";
    private const string Grouped = "#,0.############################";

    // Digits of a rate or a sum of money that a spreader can be set to; needs keep one more because guides print it.
    public static string Short(double value) => Print(value, 3, Grouped);

    public static string Printed(double value) => Print(value, 4, Grouped);

    // A pocket calculator takes eight to ten digits and no grouping commas.
    public static string Calculator(double value, int digits) => Print(value, digits, Plain);

    // A limit is compared with what the laboratory printed, which has no grouping commas.
    public static string AsReported(decimal value) => value.ToString(Plain, CultureInfo.InvariantCulture);

    public static string Of(decimal value) => value.ToString(Grouped, CultureInfo.InvariantCulture);

    private static string Print(double value, int digits, string format)
    {
        if (value == 0)
        {
            return "0";
        }

        var size = Math.Abs(value);
        if (!double.IsFinite(value) || size is >= 1e15 or < 1e-12)
        {
            return value.ToString("G" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        }

        var decimals = digits - 1 - (int)Math.Floor(Math.Log10(size));
        if (decimals >= 0)
        {
            return Math.Round((decimal)value, Math.Min(decimals, 28), MidpointRounding.AwayFromZero).ToString(format, CultureInfo.InvariantCulture);
        }

        var step = (decimal)Math.Pow(10, -decimals);
        return (Math.Round((decimal)value / step, MidpointRounding.AwayFromZero) * step).ToString(format, CultureInfo.InvariantCulture);
    }
}
