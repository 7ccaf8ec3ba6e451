namespace SoilAdvisor.Agronomy.Certification;

/// <summary>
/// Temperature inside a compost pile. Exact in decimal, so that 55 °C is 131 °F and never a hair less. The rules print whole degrees
/// Fahrenheit. Valid from -60 to 300 °F; default is 0 °F.
/// </summary>
public readonly record struct PileTemperature : IComparable<PileTemperature>
{
    private const decimal Coldest = -60;
    private const decimal Hottest = 300;

    private PileTemperature(decimal fahrenheit) => Fahrenheit = fahrenheit is >= Coldest and <= Hottest
        ? fahrenheit
        : throw new ArgumentOutOfRangeException(nameof(fahrenheit), fahrenheit, "A pile is between -60 and 300 °F.");

    /// <summary>Degrees Fahrenheit.</summary>
    public decimal Fahrenheit { get; }

    /// <summary>Degrees Celsius: (F − 32) × 5 / 9.</summary>
    public decimal Celsius => (Fahrenheit - 32) * 5 / 9;

    /// <summary>From degrees Fahrenheit.</summary>
    /// <param name="degrees">-60 to 300.</param>
    /// <exception cref="ArgumentOutOfRangeException">No pile is that cold or hot.</exception>
    public static PileTemperature FromFahrenheit(decimal degrees) => new(degrees);

    /// <summary>From degrees Celsius: F = C × 9 / 5 + 32.</summary>
    /// <param name="degrees">-51 to 148.</param>
    /// <exception cref="ArgumentOutOfRangeException">No pile is that cold or hot.</exception>
    public static PileTemperature FromCelsius(decimal degrees) => new((degrees * 9 / 5) + 32);

    /// <inheritdoc />
    public int CompareTo(PileTemperature other) => Fahrenheit.CompareTo(other.Fahrenheit);

    /// <summary>Colder.</summary>
    public static bool operator <(PileTemperature left, PileTemperature right) => left.Fahrenheit < right.Fahrenheit;

    /// <summary>Hotter.</summary>
    public static bool operator >(PileTemperature left, PileTemperature right) => left.Fahrenheit > right.Fahrenheit;

    /// <summary>Colder or the same.</summary>
    public static bool operator <=(PileTemperature left, PileTemperature right) => left.Fahrenheit <= right.Fahrenheit;

    /// <summary>Hotter or the same.</summary>
    public static bool operator >=(PileTemperature left, PileTemperature right) => left.Fahrenheit >= right.Fahrenheit;
}
