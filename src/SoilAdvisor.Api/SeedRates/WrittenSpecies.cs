using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.SeedRates;

/// <summary>One species of a sowing, as received.</summary>
internal sealed record WrittenSpecies
{
    public string? CoverCrop { get; init; }

    /// <summary>Share of its full rate, %; this or seedsPerSquareFoot; left out, equal shares.</summary>
    public WrittenNumber? SharePercent { get; init; }

    public WrittenNumber? SeedsPerSquareFoot { get; init; }

    /// <summary>From the tag; left out, the tables' figure.</summary>
    public WrittenNumber? SeedsPerPound { get; init; }

    /// <summary>Full rate of the species alone, pure live seed; left out, the published rate.</summary>
    public WrittenQuantity? FullRate { get; init; }

    /// <summary>From the tag, %; with germination.</summary>
    public WrittenNumber? Purity { get; init; }

    /// <summary>From the tag, %; with purity.</summary>
    public WrittenNumber? Germination { get; init; }

    /// <summary>Hard or dormant seed from the tag, %; left out where the crop cannot wait for it.</summary>
    public WrittenNumber? HardSeed { get; init; }

    public WrittenPrice? Price { get; init; }
}
