using System.Globalization;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Climate;

/// <summary>
/// A plant hardiness zone of the United States Department of Agriculture, 1a to 13b: steps of 5 °F of the coldest night of the year, averaged over
/// years. Zone 1a begins at -60 °F. Colder nights happen. Half zones are optional: "7" covers 7a and 7b.
/// </summary>
public readonly record struct HardinessZone
{
    private const int Warmest = 13;
    private const int ColdestOfAll = -60;

    private HardinessZone(int number, char? half) => (Number, Half) = (number, half);

    /// <summary>1 to 13.</summary>
    public int Number { get; }

    /// <summary>a for the colder half, b for the warmer; null for the whole zone.</summary>
    public char? Half { get; }

    /// <summary>Low end of the coldest night of an average year.</summary>
    public Temperature ColdestFrom => Temperature.FromDegreesFahrenheit(ColdestOfAll + (10 * (Number - 1)) + (Half == 'b' ? 5 : 0));

    /// <summary>High end of it.</summary>
    public Temperature ColdestTo => Temperature.FromDegreesFahrenheit(ColdestOfAll + (10 * Number) - (Half == 'a' ? 5 : 0));

    /// <summary>Reads "6", "6a" or "6B"; null for anything else.</summary>
    /// <param name="text">The zone as written.</param>
    public static HardinessZone? Read(string? text)
    {
        var written = text?.Trim().ToLowerInvariant() ?? "";
        var half = written.EndsWith('a') || written.EndsWith('b') ? written[^1] : (char?)null;
        var digits = half is null ? written : written[..^1];
        return int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= Warmest ? new(number, half) : null;
    }

    /// <inheritdoc/>
    public override string ToString() => Number.ToString(CultureInfo.InvariantCulture) + Half;
}
