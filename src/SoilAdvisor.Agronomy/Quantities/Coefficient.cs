namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>
/// A published number of an equation, in the unit that the equation's symbol states. Zero by default; always finite. It only ever enters
/// the formula it was published for.
/// </summary>
public readonly record struct Coefficient
{
    /// <summary>Makes a coefficient.</summary>
    /// <param name="value">Its number; finite.</param>
    public Coefficient(double value) => Value = double.IsFinite(value)
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A coefficient must be finite.");

    /// <summary>The number.</summary>
    public double Value { get; }
}
