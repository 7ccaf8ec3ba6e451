namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>
/// Part of a ground stone that passes one sieve, cumulative: 0 to 100 % by mass, finer classes included. Zero by default. What lies between
/// two sieves is another type (<see cref="SieveClassShare"/>); the two never stand in for one another.
/// </summary>
public readonly record struct PassingShare
{
    private PassingShare(double value) => Percent = value is >= 0 and <= 100
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A part that passes a sieve lies from 0 to 100 %.");

    /// <summary>Percent by mass.</summary>
    public double Percent { get; }

    /// <summary>From percent by mass.</summary>
    /// <param name="value">0 to 100.</param>
    public static PassingShare FromPercent(double value) => new(value);
}
