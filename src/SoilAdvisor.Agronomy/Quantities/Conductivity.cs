namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>Electrical conductivity of a soil extract. Zero by default; never negative, always finite. Which extract is said beside it.</summary>
public readonly record struct Conductivity
{
    private Conductivity(double value) => DecisiemensPerMetre = double.IsFinite(value) && value >= 0
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A conductivity must be finite and not below zero.");

    /// <summary>Decisiemens per metre, the same number as mmho/cm.</summary>
    public double DecisiemensPerMetre { get; }

    /// <summary>Microsiemens per centimetre.</summary>
    public double MicrosiemensPerCentimetre => DecisiemensPerMetre * 1000;

    /// <summary>From decisiemens per metre.</summary>
    /// <param name="value">dS/m.</param>
    public static Conductivity FromDecisiemensPerMetre(double value) => new(value);
}
