namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>Cation exchange capacity of a soil. Zero by default; never negative, always finite.</summary>
public readonly record struct ExchangeCapacity
{
    private ExchangeCapacity(double value) => MilliequivalentsPer100Grams = double.IsFinite(value) && value >= 0
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "An exchange capacity must be finite and not below zero.");

    /// <summary>Milliequivalents per 100 g, the same number as cmol of charge per kg.</summary>
    public double MilliequivalentsPer100Grams { get; }

    /// <summary>From milliequivalents per 100 g.</summary>
    /// <param name="value">meq/100 g.</param>
    public static ExchangeCapacity FromMilliequivalentsPer100Grams(double value) => new(value);
}
