namespace SoilAdvisor.Agronomy.Climate;

/// <summary>Warmth above a base, summed over days. Zero by default; never negative; always finite. Its basis travels beside it.</summary>
public readonly record struct DegreeDays : IComparable<DegreeDays>
{
    private DegreeDays(double value) => FahrenheitDays = value >= 0 && double.IsFinite(value)
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "Degree-days are finite and not below zero.");

    /// <summary>In degrees Fahrenheit times days.</summary>
    public double FahrenheitDays { get; }

    /// <summary>In degrees Celsius times days.</summary>
    public double CelsiusDays => FahrenheitDays / 1.8;

    /// <summary>From degrees Fahrenheit times days.</summary>
    /// <param name="value">Fahrenheit degree-days; not below zero.</param>
    public static DegreeDays FromFahrenheitDays(double value) => new(value);

    /// <summary>From degrees Celsius times days.</summary>
    /// <param name="value">Celsius degree-days; not below zero.</param>
    public static DegreeDays FromCelsiusDays(double value) => new(value * 1.8);

    /// <inheritdoc/>
    public int CompareTo(DegreeDays other) => FahrenheitDays.CompareTo(other.FahrenheitDays);

    /// <summary>Sum.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static DegreeDays operator +(DegreeDays a, DegreeDays b) => new(a.FahrenheitDays + b.FahrenheitDays);

    /// <summary>Order.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static bool operator <(DegreeDays a, DegreeDays b) => a.CompareTo(b) < 0;

    /// <summary>Order.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static bool operator >(DegreeDays a, DegreeDays b) => a.CompareTo(b) > 0;

    /// <summary>Order.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static bool operator <=(DegreeDays a, DegreeDays b) => a.CompareTo(b) <= 0;

    /// <summary>Order.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static bool operator >=(DegreeDays a, DegreeDays b) => a.CompareTo(b) >= 0;
}
