using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Beds;

/// <summary>A crop on a bed, as received.</summary>
internal sealed record WrittenPlanting
{
    public string? Crop { get; init; }

    public string? PlantingDate { get; init; }

    public string? FirstHarvest { get; init; }

    public string? HarvestEnd { get; init; }

    public WrittenQuantity? ExpectedYield { get; init; }

    /// <summary>contact or no-contact of the edible part with soil; left out, the crop's.</summary>
    public string? Placement { get; init; }
}
