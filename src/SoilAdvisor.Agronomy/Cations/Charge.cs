using SoilAdvisor.Agronomy.Acidity;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>
/// Charge of cations, of acidity or of the whole exchange in 100 units of soil. Zero by default; never negative, always finite. Charges of
/// the two bases do not add: that is a compile error.
/// </summary>
/// <typeparam name="TBasis">Mass or volume of soil.</typeparam>
public readonly record struct Charge<TBasis>
    where TBasis : ISoilBasis
{
    private Charge(double value) => Milliequivalents = double.IsFinite(value) && value >= 0
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A charge must be finite and not below zero.");

    /// <summary>Milliequivalents in 100 g or 100 cm3 of soil.</summary>
    public double Milliequivalents { get; }

    /// <summary>From milliequivalents in 100 g or 100 cm3 of soil.</summary>
    /// <param name="value">meq.</param>
    public static Charge<TBasis> FromMilliequivalents(double value) => new(value);

    /// <summary>The acidity that a buffer of this basis found. A buffer of the other basis does not compile.</summary>
    /// <typeparam name="TBuffer">The buffer.</typeparam>
    /// <param name="acidity">Its acidity.</param>
    public static Charge<TBasis> Of<TBuffer>(BufferAcidity<TBuffer> acidity)
        where TBuffer : IBufferOn<TBasis> => new(acidity.Value);

    /// <summary>Sum.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static Charge<TBasis> operator +(Charge<TBasis> a, Charge<TBasis> b) => new(a.Milliequivalents + b.Milliequivalents);
}
