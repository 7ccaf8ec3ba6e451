namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>
/// Mass of an extracted element in a mass of dry soil. Zero by default; never negative, always finite. It is no amount per area until a
/// depth and a bulk density are named.
/// </summary>
public readonly record struct SoilConcentration
{
    private SoilConcentration(double value) => MilligramsPerKilogram = double.IsFinite(value) && value >= 0
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A concentration in soil must be finite and not below zero.");

    /// <summary>Milligrams per kilogram (parts per million by mass).</summary>
    public double MilligramsPerKilogram { get; }

    /// <summary>From milligrams per kilogram.</summary>
    /// <param name="value">mg/kg.</param>
    public static SoilConcentration FromMilligramsPerKilogram(double value) => new(value);
}
