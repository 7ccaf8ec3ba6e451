namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>
/// Soil pH on another scale than one to one in water, from 0 to 14. The scale is part of the type: a salt pH reaches a water-pH target only
/// through a published conversion. Default is 0, which no soil has.
/// </summary>
/// <typeparam name="TScale">The scale.</typeparam>
public readonly record struct ScaledPh<TScale>
    where TScale : IPhScale
{
    /// <summary>Makes a pH. Throws outside 0 to 14.</summary>
    /// <param name="value">pH units.</param>
    public ScaledPh(double value) => Value = value is >= 0 and <= 14
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A pH lies from 0 to 14.");

    /// <summary>pH units.</summary>
    public double Value { get; }
}
