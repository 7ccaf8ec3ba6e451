using System.Globalization;

namespace SoilAdvisor.Agronomy.Certainty;

/// <summary>How likely something is, from 0 (impossible, the default) to 1 (certain).</summary>
public readonly record struct Probability : IComparable<Probability>
{
    private Probability(double value) => Fraction = value is >= 0 and <= 1
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A probability lies from 0 to 1.");

    /// <summary>Certain.</summary>
    public static Probability Certain { get; } = new(1);

    /// <summary>As a fraction from 0 to 1.</summary>
    public double Fraction { get; }

    /// <summary>In whole percent, as it is printed and as it is held against a threshold.</summary>
    internal int WholePercent => (int)Math.Round(Fraction * 100, MidpointRounding.AwayFromZero);

    /// <summary>From a fraction.</summary>
    /// <param name="value">From 0 to 1.</param>
    public static Probability FromFraction(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(Probability other) => Fraction.CompareTo(other.Fraction);

    /// <summary>In whole percent; what is not quite certain never prints as 0 % or 100 %.</summary>
    public override string ToString() => Fraction switch
    {
        0 => "0 %",
        1 => "100 %",
        < 0.01 => "under 1 %",
        > 0.99 => "over 99 %",
        _ => WholePercent.ToString(CultureInfo.InvariantCulture) + " %",
    };
}
