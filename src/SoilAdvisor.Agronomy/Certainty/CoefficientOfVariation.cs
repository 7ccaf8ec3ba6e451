using System.Globalization;

namespace SoilAdvisor.Agronomy.Certainty;

/// <summary>
/// Standard deviation in percent of the value. From 0 (the default: no spread) to 1,000 %, beyond which a result says nothing at all.
/// </summary>
public readonly record struct CoefficientOfVariation : IComparable<CoefficientOfVariation>
{
    /// <summary>Largest that can be stated, percent.</summary>
    public const int LargestPercent = 1000;

    private CoefficientOfVariation(double value) => Fraction = value is >= 0 and <= LargestPercent / 100d
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), $"A coefficient of variation lies from 0 to {LargestPercent.ToString(CultureInfo.InvariantCulture)} %.");

    /// <summary>As a fraction: 0.1 for 10 %.</summary>
    public double Fraction { get; }

    /// <summary>In percent.</summary>
    public double Percent => Fraction * 100;

    /// <summary>Standard deviation of the natural logarithm of a lognormal quantity with this spread: √ln(1 + CV²).</summary>
    public double OfLogarithm => Math.Sqrt(Math.Log(1 + (Fraction * Fraction)));

    /// <summary>From percent.</summary>
    /// <param name="value">Percent, 0 to 1,000.</param>
    public static CoefficientOfVariation FromPercent(double value) => new(value / 100);

    /// <summary>From a fraction.</summary>
    /// <param name="value">Fraction, 0 to 10.</param>
    public static CoefficientOfVariation FromFraction(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(CoefficientOfVariation other) => Fraction.CompareTo(other.Fraction);

    /// <summary>For example "10 %".</summary>
    public override string ToString() => Quantities.PlainNumber.Of(Percent) + " %";
}
