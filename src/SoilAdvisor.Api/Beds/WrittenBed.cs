using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;
using SoilAdvisor.Api.YearsAhead;

namespace SoilAdvisor.Api.Beds;

/// <summary>A bed, as received.</summary>
internal sealed record WrittenBed
{
    public string? Id { get; init; }

    public WrittenQuantity? Length { get; init; }

    public WrittenQuantity? Width { get; init; }

    public WrittenQuantity? Area { get; init; }

    public WrittenQuantity? CenterSpacing { get; init; }

    /// <summary>bed-top, bed-and-path or band.</summary>
    public string? Spread { get; init; }

    /// <summary>Id of its soil test.</summary>
    public string? SoilTest { get; init; }

    /// <summary>field or high-tunnel.</summary>
    public string? Site { get; init; }

    public IReadOnlyList<WrittenPlanting>? Crops { get; init; }

    public IReadOnlyList<WrittenApplied>? Applied { get; init; }

    public IReadOnlyList<WrittenStand>? Previous { get; init; }

    public WrittenGap? Gap { get; init; }

    public WrittenNumber? WaterWithinFeet { get; init; }

    /// <summary>Compost wanted for structure, whatever its nutrients.</summary>
    public WrittenStructure? Structure { get; init; }
}
