using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.SoilTests;

/// <summary>A tested sample, as received.</summary>
internal sealed record WrittenSoilTest
{
    public string? Id { get; init; }

    /// <summary>Day of sampling, 2026-03-31.</summary>
    public string? Sampled { get; init; }

    public string? Lab { get; init; }

    public WrittenDepth? Depth { get; init; }

    /// <summary>Cores mixed into the sample.</summary>
    public WrittenNumber? Cores { get; init; }

    /// <summary>When in the crop's life it was taken, where a test means nothing without it: before-sidedressing.</summary>
    public string? Timing { get; init; }

    public string? Texture { get; init; }

    /// <summary>The laboratory's own soil class, echoed.</summary>
    public string? SoilClass { get; init; }

    /// <summary>Whether the soil fizzes with acid.</summary>
    public bool? FreeLime { get; init; }

    /// <summary>Bulk density of the sampled layer in the field, g/cm3.</summary>
    public WrittenNumber? BulkDensity { get; init; }

    /// <summary>lb/acre for one mg/kg by the laboratory's own statement.</summary>
    public WrittenNumber? PoundsPerAcreFactor { get; init; }

    public IReadOnlyList<WrittenReading>? Readings { get; init; }

    public IReadOnlyList<WrittenLabRecommendation>? LabRecommendations { get; init; }
}
