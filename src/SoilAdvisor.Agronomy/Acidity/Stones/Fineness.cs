namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>How much of a stone acts in time by its grind, 0 to 100 %, as one state counts it. Zero by default.</summary>
public readonly record struct Fineness
{
    private Fineness(double value) => Percent = value is >= 0 and <= 100 + 1e-9
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A fineness lies from 0 to 100 %.");

    /// <summary>Percent.</summary>
    public double Percent { get; }

    /// <summary>From percent.</summary>
    /// <param name="value">0 to 100.</param>
    public static Fineness FromPercent(double value) => new(value);
}
