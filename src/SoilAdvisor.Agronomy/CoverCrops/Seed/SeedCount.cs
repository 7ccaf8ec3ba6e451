namespace SoilAdvisor.Agronomy.CoverCrops.Seed;

/// <summary>How many seeds weigh one pound. Above zero and finite. It differs from lot to lot: the seed tag goes before any table.</summary>
public readonly record struct SeedCount
{
    private SeedCount(double perPound) => PerPound = double.IsFinite(perPound) && perPound > 0
        ? perPound
        : throw new ArgumentOutOfRangeException(nameof(perPound), "A seed count must be finite and above zero.");

    /// <summary>Seeds in one pound.</summary>
    public double PerPound { get; }

    /// <summary>From seeds in one pound.</summary>
    /// <param name="value">Seeds per pound; above zero.</param>
    public static SeedCount FromPerPound(double value) => new(value);
}
