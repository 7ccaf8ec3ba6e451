using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>Asks what nitrogen a cut cover crop gives.</summary>
internal sealed record NitrogenRequest
{
    public string? CoverCrop { get; init; }

    /// <summary>Ids of the species of a mixture; its nitrogen must have been measured.</summary>
    public IReadOnlyList<string>? Mixture { get; init; }

    /// <summary>lb/acre or kg/ha.</summary>
    public WrittenQuantity? DryMatter { get; init; }

    /// <summary>Cuts of a frame, dried and weighed; their mean is taken.</summary>
    public IReadOnlyList<WrittenSample>? Samples { get; init; }

    /// <summary>Measured; left out, the published range of the species.</summary>
    public WrittenNumber? NitrogenPercent { get; init; }

    /// <summary>Stage when killed, in words; echoed.</summary>
    public string? Stage { get; init; }
}
