namespace SoilAdvisor.Api.Sampling;

/// <summary>A bed to be sampled, as received.</summary>
internal sealed record WrittenSampledBed
{
    public string? Id { get; init; }

    /// <summary>The soil in your words or the soil survey's.</summary>
    public string? Soil { get; init; }

    /// <summary>Crops of the last seasons; an empty list says that there were none.</summary>
    public IReadOnlyList<string>? CropHistory { get; init; }

    /// <summary>What was spread in the last seasons; an empty list says nothing was.</summary>
    public IReadOnlyList<string>? Amendments { get; init; }

    /// <summary>field or high-tunnel.</summary>
    public string? Site { get; init; }
}
