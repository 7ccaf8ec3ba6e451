using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.SoilTests;

/// <summary>A rate that the laboratory printed, as received.</summary>
internal sealed record WrittenLabRecommendation
{
    /// <summary>What it recommends, for example lime.</summary>
    public string? What { get; init; }

    public WrittenNumber? Value { get; init; }

    public string? Unit { get; init; }

    /// <summary>What it counts, for example calcium carbonate equivalent.</summary>
    public string? Basis { get; init; }

    public WrittenDepth? Depth { get; init; }
}
