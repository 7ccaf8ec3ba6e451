namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>
/// The part of one form of a nutrient that becomes available. A share of organic nitrogen can be taken of organic nitrogen only: applied to
/// total nitrogen it does not compile. Zero by default; always finite; from -1 (tied up as much again) to 1.
/// </summary>
/// <typeparam name="TForm">The form that it is a share of.</typeparam>
public readonly record struct ShareOf<TForm> : IComparable<ShareOf<TForm>>
    where TForm : IForm
{
    private ShareOf(double fraction) => Fraction = fraction is >= -1 and <= 1
        ? fraction
        : throw new ArgumentOutOfRangeException(nameof(fraction), "A share lies from -1 to 1.");

    /// <summary>As a fraction: 0.25 for 25 %.</summary>
    public double Fraction { get; }

    /// <summary>In percent.</summary>
    public double Percent => Fraction * 100;

    /// <summary>From a fraction. Throws outside -1 to 1.</summary>
    /// <param name="value">Fraction.</param>
    public static ShareOf<TForm> FromFraction(double value) => new(value);

    /// <summary>From percent. Throws outside -100 to 100.</summary>
    /// <param name="value">Percent.</param>
    public static ShareOf<TForm> FromPercent(double value) => new(value / 100);

    /// <summary>What the share gives of an amount of its form.</summary>
    /// <param name="amount">The amount.</param>
    public MassPerArea Of(Rate<TForm> amount) => amount.Amount * Fraction;

    /// <inheritdoc/>
    public int CompareTo(ShareOf<TForm> other) => Fraction.CompareTo(other.Fraction);
}
