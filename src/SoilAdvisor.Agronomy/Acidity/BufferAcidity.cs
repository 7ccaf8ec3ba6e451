namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>
/// Acidity that one named buffer found, in the unit of that buffer's method (Mehlich meq/100 cm3, Adams-Evans meq/100 g). Zero by default;
/// never negative, always finite.
/// </summary>
/// <typeparam name="TBuffer">The buffer.</typeparam>
public readonly record struct BufferAcidity<TBuffer>
    where TBuffer : IBuffer
{
    /// <summary>Makes an acidity. Throws below zero.</summary>
    /// <param name="value">In the unit of the buffer's method.</param>
    public BufferAcidity(double value) => Value = double.IsFinite(value) && value >= 0
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "An acidity must be finite and not below zero.");

    /// <summary>In the unit of the buffer's method.</summary>
    public double Value { get; }
}
