namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>
/// A value of one named index; always finite, and it may lie below zero. The index is part of the type, so that one index cannot enter another's
/// formula or stand for it. Zero by default.
/// </summary>
/// <typeparam name="TIndex">The index.</typeparam>
public readonly record struct SoilIndex<TIndex>
    where TIndex : ISoilIndex
{
    /// <summary>Makes a value. Throws when it is not finite, as after a division by nothing.</summary>
    /// <param name="value">In the index's own unit.</param>
    public SoilIndex(double value) => Value = double.IsFinite(value)
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "An index must be finite.");

    /// <summary>In the index's own unit.</summary>
    public double Value { get; }
}
