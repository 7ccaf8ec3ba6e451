using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>One cut of a frame, as received.</summary>
internal sealed record WrittenSample
{
    /// <summary>Dry weight; this or fresh.</summary>
    public WrittenQuantity? Dried { get; init; }

    /// <summary>Fresh weight, with dryMatterPercent beside it.</summary>
    public WrittenQuantity? Fresh { get; init; }

    /// <summary>Dry matter in the fresh weight, %.</summary>
    public WrittenNumber? DryMatterPercent { get; init; }

    /// <summary>Area that was cut; of several frames weighed together, all of them.</summary>
    public WrittenQuantity? Frame { get; init; }
}
