using System.Globalization;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>Weights as they are read off a bench scale.</summary>
public static class Weights
{
    private const int OuncesInPound = 16;

    /// <summary>Pounds and whole ounces; tenths of an ounce below one pound; whole pounds from 100.</summary>
    /// <param name="mass">The weight; not negative.</param>
    public static string PoundsAndOunces(Mass mass)
    {
        var ounces = mass.Pounds * OuncesInPound;
        if (ounces >= 100 * OuncesInPound)
        {
            return Math.Round(mass.Pounds, MidpointRounding.AwayFromZero).ToString("#,0", CultureInfo.InvariantCulture) + " lb";
        }

        var whole = Math.Round(ounces, MidpointRounding.AwayFromZero);
        if (whole >= OuncesInPound)
        {
            var (pounds, rest) = ((int)(whole / OuncesInPound), (int)(whole % OuncesInPound));
            return rest == 0 ? $"{Text(pounds)} lb" : $"{Text(pounds)} lb {Text(rest)} oz";
        }

        var tenths = Math.Round(ounces, 1, MidpointRounding.AwayFromZero);
        return tenths == 0 && ounces > 0 ? "under 0.1 oz" : tenths.ToString("0.#", CultureInfo.InvariantCulture) + " oz";

        static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
    }
}
