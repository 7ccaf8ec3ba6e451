namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>Amount of an extracted element in a mass of dry soil, counted in moles. Zero by default; never negative, always finite.</summary>
public readonly record struct AmountOfSubstance
{
    private AmountOfSubstance(double value) => MillimolesPerKilogram = double.IsFinite(value) && value >= 0
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "An amount must be finite and not below zero.");

    /// <summary>Millimoles per kilogram.</summary>
    public double MillimolesPerKilogram { get; }

    /// <summary>From millimoles per kilogram.</summary>
    /// <param name="value">mmol/kg.</param>
    public static AmountOfSubstance FromMillimolesPerKilogram(double value) => new(value);
}
