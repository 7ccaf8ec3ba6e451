namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Lime that raises a kilogram of soil by one unit of pH at equilibrium: mg calcium carbonate per kg and pH. Zero by default; never negative, always finite.</summary>
public readonly record struct LimeBufferCapacity
{
    /// <summary>Makes a capacity. Throws below zero.</summary>
    /// <param name="value">mg calcium carbonate per kg of soil and unit of pH.</param>
    public LimeBufferCapacity(double value) => MilligramsPerKilogramAndPh = double.IsFinite(value) && value >= 0
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A lime buffer capacity must be finite and not below zero.");

    /// <summary>mg calcium carbonate per kg of soil and unit of pH.</summary>
    public double MilligramsPerKilogramAndPh { get; }
}
