using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.YearsAhead;

/// <summary>Compost wanted for structure, as received: a rate or a depth.</summary>
internal sealed record WrittenStructure
{
    /// <summary>Material id.</summary>
    public string? Material { get; init; }

    /// <summary>Rate as spread, for example {"value": 5, "unit": "ton/acre"}.</summary>
    public WrittenQuantity? Rate { get; init; }

    /// <summary>Instead of a rate: depth of the layer, for example {"value": 0.5, "unit": "in"}.</summary>
    public WrittenQuantity? Depth { get; init; }
}
