using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Climate;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>Asks which cover crops fit a free time.</summary>
internal sealed record CoverCropsRequest
{
    public WrittenGap? Window { get; init; }

    /// <summary>phosphorus, nitrogen, hold-nitrogen, weeds, cover, compaction, pollinators, nematodes; left out, cover and weeds.</summary>
    public IReadOnlyList<string>? Aims { get; init; }

    /// <summary>How heavily kinds of reasons count, by kind; left out, the usual weights, which are shown.</summary>
    public IReadOnlyDictionary<string, WrittenNumber>? Weights { get; init; }

    public WrittenFrost? Frost { get; init; }

    public WrittenClimate? Climate { get; init; }

    public string? NextCrop { get; init; }

    public string? LastCrop { get; init; }

    /// <summary>Nematodes and diseases recorded on the bed, for example root-knot; hosts of them are left out.</summary>
    public IReadOnlyList<string>? Problems { get; init; }

    /// <summary>false asks for the federal termination guidance.</summary>
    public bool? Irrigated { get; init; }

    /// <summary>Federal termination zone, 1 to 4.</summary>
    public WrittenNumber? TerminationZone { get; init; }

    public string? Guide { get; init; }

    public string? Region { get; init; }

    /// <summary>Where it shows that phosphorus is below target, phosphorus counts as an aim.</summary>
    public WrittenSoilTest? SoilTest { get; init; }

    public WrittenQuantity? Area { get; init; }
}
