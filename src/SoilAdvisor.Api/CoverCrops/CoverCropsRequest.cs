using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>Asks which cover crops fit a free time.</summary>
internal sealed record CoverCropsRequest
{
    public WrittenGap? Window { get; init; }

    /// <summary>phosphorus, nitrogen, weeds, cover, compaction, pollinators; left out, cover and weeds.</summary>
    public IReadOnlyList<string>? Aims { get; init; }

    public WrittenFrost? Frost { get; init; }

    public string? NextCrop { get; init; }

    public string? LastCrop { get; init; }

    public string? Guide { get; init; }

    public string? Region { get; init; }

    /// <summary>Where it shows that phosphorus is below target, phosphorus counts as an aim.</summary>
    public WrittenSoilTest? SoilTest { get; init; }

    public WrittenQuantity? Area { get; init; }
}
