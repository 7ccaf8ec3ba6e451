namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>
/// pH of one named buffer after mixing with soil: from 0 to 14. The buffer is part of the type, so that one buffer's value cannot enter
/// another's formula. Default is 0, which no buffer shows.
/// </summary>
/// <typeparam name="TBuffer">The buffer.</typeparam>
public readonly record struct BufferPh<TBuffer>
    where TBuffer : IBuffer
{
    /// <summary>Makes a buffer pH. Throws outside 0 to 14.</summary>
    /// <param name="value">pH units.</param>
    public BufferPh(double value) => Value = value is >= 0 and <= 14
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A pH lies from 0 to 14.");

    /// <summary>pH units.</summary>
    public double Value { get; }
}
