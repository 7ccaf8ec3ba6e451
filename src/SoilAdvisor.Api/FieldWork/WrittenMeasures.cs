using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.FieldWork;

/// <summary>What a farm measures out and spreads with, as received.</summary>
internal sealed record WrittenMeasures
{
    /// <summary>Bucket, level full, for example {"value": 5, "unit": "gal"}.</summary>
    public WrittenQuantity? Bucket { get; init; }

    /// <summary>Scoop, level full.</summary>
    public WrittenQuantity? Scoop { get; init; }

    /// <summary>Smallest step of the scale, for example {"value": 0.5, "unit": "lb"}.</summary>
    public WrittenQuantity? ScaleStep { get; init; }

    /// <summary>Length of the strip that a spreader is tried on.</summary>
    public WrittenQuantity? Strip { get; init; }

    /// <summary>Width that one pass of the spreader or hand covers.</summary>
    public WrittenQuantity? Swath { get; init; }
}
