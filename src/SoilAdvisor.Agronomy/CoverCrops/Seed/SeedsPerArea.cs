namespace SoilAdvisor.Agronomy.CoverCrops.Seed;

/// <summary>Seeds on an area of ground. Zero by default; always finite; never below zero.</summary>
public readonly record struct SeedsPerArea
{
    private SeedsPerArea(double perSquareFoot) => PerSquareFoot = double.IsFinite(perSquareFoot) && perSquareFoot >= 0
        ? perSquareFoot
        : throw new ArgumentOutOfRangeException(nameof(perSquareFoot), "Seeds on an area must be finite and not below zero.");

    /// <summary>Seeds on one square foot.</summary>
    public double PerSquareFoot { get; }

    /// <summary>From seeds on one square foot.</summary>
    /// <param name="value">Seeds per square foot; not below zero.</param>
    public static SeedsPerArea FromPerSquareFoot(double value) => new(value);
}
