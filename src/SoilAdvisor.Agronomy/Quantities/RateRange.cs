namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>A published range of mass per area: low end, high end. One printed number has both ends equal. Never averaged.</summary>
public readonly record struct RateRange
{
    /// <summary>Makes a range. Throws when the low end is above the high end.</summary>
    /// <param name="low">Low end.</param>
    /// <param name="high">High end.</param>
    public RateRange(MassPerArea low, MassPerArea high)
    {
        if (low > high)
        {
            throw new ArgumentException("The low end of a range is above its high end.", nameof(low));
        }

        (Low, High) = (low, high);
    }

    /// <summary>Low end.</summary>
    public MassPerArea Low { get; }

    /// <summary>High end.</summary>
    public MassPerArea High { get; }

    /// <summary>True when one number was printed.</summary>
    public bool IsOneNumber => Low == High;

    /// <summary>Sum, end by end.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static RateRange operator +(RateRange a, RateRange b) => new(a.Low + b.Low, a.High + b.High);
}
