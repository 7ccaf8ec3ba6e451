namespace SoilAdvisor.Agronomy.Cations;

/// <summary>Part of the exchange capacity that something fills. Zero by default; never negative, always finite.</summary>
public readonly record struct Saturation
{
    private Saturation(double value) => Percent = double.IsFinite(value) && value >= 0
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A saturation must be finite and not below zero.");

    /// <summary>Percent of the exchange capacity.</summary>
    public double Percent { get; }

    /// <summary>From percent of the exchange capacity.</summary>
    /// <param name="value">Percent.</param>
    public static Saturation FromPercent(double value) => new(value);
}
