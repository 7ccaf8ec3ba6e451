namespace SoilAdvisor.Agronomy.Certainty;

/// <summary>Standard deviation of a pH, in pH units: 0 (the default) to 14.</summary>
public readonly record struct PhSpread
{
    private PhSpread(double value) => PhUnits = value is >= 0 and <= 14
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A standard deviation of pH lies from 0 to 14.");

    /// <summary>In pH units.</summary>
    public double PhUnits { get; }

    /// <summary>From pH units.</summary>
    /// <param name="value">pH units.</param>
    public static PhSpread FromPhUnits(double value) => new(value);

    /// <summary>For example "0.1 pH units".</summary>
    public override string ToString() => Quantities.PlainNumber.Of(PhUnits) + " pH units";
}
