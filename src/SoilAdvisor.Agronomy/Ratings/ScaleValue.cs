namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>
/// A number as it is compared with the limits of a scale, in the scale's unit. A printed number always becomes the same value, so that a result
/// equal to a printed limit is found equal: nine decimals are kept, exact up to nine million. Zero by default.
/// </summary>
public readonly record struct ScaleValue
{
    internal const int Decimals = 9;

    private ScaleValue(double number) => Number = number;

    internal double Number { get; }

    /// <summary>From a printed or exactly converted number.</summary>
    /// <param name="number">In the scale's unit.</param>
    public static ScaleValue From(decimal number) => new(ToDouble(number));

    internal static double ToDouble(decimal number) => (double)decimal.Round(number, Decimals);
}
