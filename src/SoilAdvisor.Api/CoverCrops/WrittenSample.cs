using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>One cut of a frame, as received.</summary>
internal sealed record WrittenSample
{
    /// <summary>Dried mass.</summary>
    public WrittenQuantity? Dried { get; init; }

    /// <summary>Area of the frame.</summary>
    public WrittenQuantity? Frame { get; init; }
}
