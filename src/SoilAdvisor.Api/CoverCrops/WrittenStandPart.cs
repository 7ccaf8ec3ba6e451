using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>One species in the dry matter of a mixture, as received.</summary>
internal sealed record WrittenStandPart
{
    public string? CoverCrop { get; init; }

    /// <summary>Its share of the dry matter, %.</summary>
    public WrittenNumber? SharePercent { get; init; }

    /// <summary>Nitrogen in its dry matter, %.</summary>
    public WrittenNumber? NitrogenPercent { get; init; }
}
