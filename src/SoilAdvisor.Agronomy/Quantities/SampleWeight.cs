namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>Weight of the ground soil that fills a laboratory's scoop, for its volume. Not the bulk density of the field. Above zero, always finite; default is zero, which no sample has.</summary>
public readonly record struct SampleWeight
{
    private SampleWeight(double value) => GramsPerCubicCentimetre = double.IsFinite(value) && value > 0
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A sample weight must be finite and above zero.");

    /// <summary>Grams per cubic centimetre of ground sample.</summary>
    public double GramsPerCubicCentimetre { get; }

    /// <summary>From grams per cubic centimetre of ground sample.</summary>
    /// <param name="value">g/cm3.</param>
    public static SampleWeight FromGramsPerCubicCentimetre(double value) => new(value);
}
