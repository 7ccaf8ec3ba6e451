using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Beds;

/// <summary>What stood on a bed before, as received.</summary>
internal sealed record WrittenStand
{
    public string? Crop { get; init; }

    public string? CoverCrop { get; init; }

    /// <summary>Measured, in lb/acre or kg/ha.</summary>
    public WrittenQuantity? DryMatter { get; init; }

    public WrittenNumber? NitrogenPercent { get; init; }

    public string? Stage { get; init; }

    public string? Killed { get; init; }
}
