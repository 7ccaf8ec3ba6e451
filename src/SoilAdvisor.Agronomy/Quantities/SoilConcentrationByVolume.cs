namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>
/// Mass of an extracted element in a volume of ground soil, as laboratories that scoop their samples report it. Zero by default; never negative,
/// always finite. It becomes a concentration by mass only through the weight of the scoop, which is not stated here.
/// </summary>
public readonly record struct SoilConcentrationByVolume
{
    private SoilConcentrationByVolume(double value) => MilligramsPerCubicDecimetre = double.IsFinite(value) && value >= 0
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A concentration in soil must be finite and not below zero.");

    /// <summary>Milligrams per cubic decimetre, the same number as milligrams per litre.</summary>
    public double MilligramsPerCubicDecimetre { get; }

    /// <summary>From milligrams per cubic decimetre.</summary>
    /// <param name="value">mg/dm3.</param>
    public static SoilConcentrationByVolume FromMilligramsPerCubicDecimetre(double value) => new(value);
}
