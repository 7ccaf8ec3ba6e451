namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>
/// Part of a ground stone in one size class, between two sieves: 0 to 100 % by mass. Zero by default. What passes a sieve, finer classes
/// included, is another type (<see cref="PassingShare"/>).
/// </summary>
public readonly record struct SieveClassShare
{
    private SieveClassShare(double value) => Percent = value is >= 0 and <= 100
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A size class lies from 0 to 100 %.");

    /// <summary>Percent by mass.</summary>
    public double Percent { get; }

    /// <summary>From percent by mass.</summary>
    /// <param name="value">0 to 100.</param>
    public static SieveClassShare FromPercent(double value) => new(value);
}
