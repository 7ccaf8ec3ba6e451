namespace SoilAdvisor.Agronomy.Materials.Metals;

/// <summary>A metal in the dry matter of a material: total, mg/kg (the same number as ppm). Zero by default; never negative, always finite.</summary>
public readonly record struct MetalContent : IComparable<MetalContent>
{
    private MetalContent(double value) => MilligramsPerKilogramDry = double.IsFinite(value) && value >= 0
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A content must be finite and not below zero.");

    /// <summary>Milligrams in a kilogram of dry matter.</summary>
    public double MilligramsPerKilogramDry { get; }

    /// <summary>From milligrams in a kilogram of dry matter.</summary>
    /// <param name="value">mg/kg dry.</param>
    public static MetalContent FromMilligramsPerKilogramDry(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(MetalContent other) => MilligramsPerKilogramDry.CompareTo(other.MilligramsPerKilogramDry);
}
