namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Exchangeable acidity that a laboratory prints, some as "exchangeable H". Zero by default; never negative, always finite.</summary>
public readonly record struct ExchangeableAcidity
{
    private ExchangeableAcidity(double value) => MilliequivalentsPer100Grams = double.IsFinite(value) && value >= 0
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "An acidity must be finite and not below zero.");

    /// <summary>Milliequivalents per 100 g.</summary>
    public double MilliequivalentsPer100Grams { get; }

    /// <summary>From milliequivalents per 100 g.</summary>
    /// <param name="value">meq/100 g.</param>
    public static ExchangeableAcidity FromMilliequivalentsPer100Grams(double value) => new(value);
}
