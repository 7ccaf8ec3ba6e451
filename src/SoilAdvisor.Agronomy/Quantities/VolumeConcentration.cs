namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>
/// Mass of an extracted element in a volume of ground soil. Zero by default; never negative, always finite. It is a mass concentration only
/// once the weight of the laboratory's scoop is named.
/// </summary>
public readonly record struct VolumeConcentration
{
    private VolumeConcentration(double value) => MilligramsPerCubicDecimetre = double.IsFinite(value) && value >= 0
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A concentration in soil must be finite and not below zero.");

    /// <summary>Milligrams per cubic decimetre, the same number as mg/L of soil.</summary>
    public double MilligramsPerCubicDecimetre { get; }

    /// <summary>From milligrams per cubic decimetre.</summary>
    /// <param name="value">mg/dm3.</param>
    public static VolumeConcentration FromMilligramsPerCubicDecimetre(double value) => new(value);
}
