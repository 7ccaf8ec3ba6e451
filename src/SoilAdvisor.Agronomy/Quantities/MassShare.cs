namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>
/// Mass of something in one unit of mass of a material, for example nitrogen in a meal or phosphate in a harvest. Zero by default; always
/// finite; below zero only where soil life takes nitrogen up instead of releasing it.
/// </summary>
public readonly record struct MassShare : IComparable<MassShare>
{
    private const double PoundsInShortTon = 2000;

    private MassShare(double value) => Fraction = double.IsFinite(value)
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A share of mass must be finite.");

    /// <summary>As a fraction: 0.12 for 12 %.</summary>
    public double Fraction { get; }

    /// <summary>In percent.</summary>
    public double Percent => Fraction * 100;

    /// <summary>In pounds per short ton of 2000 lb.</summary>
    public double PoundsPerShortTon => Fraction * PoundsInShortTon;

    /// <summary>From a fraction.</summary>
    /// <param name="value">Fraction.</param>
    public static MassShare FromFraction(double value) => new(value);

    /// <summary>From percent.</summary>
    /// <param name="value">Percent.</param>
    public static MassShare FromPercent(double value) => new(value / 100);

    /// <summary>From pounds per short ton.</summary>
    /// <param name="value">Pounds per 2000 lb.</param>
    public static MassShare FromPoundsPerShortTon(double value) => new(value / PoundsInShortTon);

    /// <summary>What a mass per area of the material holds.</summary>
    /// <param name="material">Mass per area of the material.</param>
    public MassPerArea In(MassPerArea material) => material * Fraction;

    /// <inheritdoc/>
    public int CompareTo(MassShare other) => Fraction.CompareTo(other.Fraction);
}
