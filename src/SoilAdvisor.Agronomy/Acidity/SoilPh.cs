namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>
/// pH of the soil in water: says whether lime is needed, never how much. From 0 to 14. Default is 0, which no soil has. A buffer's pH is
/// another type and does not convert.
/// </summary>
public readonly record struct SoilPh
{
    /// <summary>Makes a soil pH. Throws outside 0 to 14.</summary>
    /// <param name="value">pH units.</param>
    public SoilPh(double value) => Value = value is >= 0 and <= 14
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A pH lies from 0 to 14.");

    /// <summary>pH units.</summary>
    public double Value { get; }
}
