using SoilAdvisor.Api.CoverCrops;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Beds;

/// <summary>What stood on a bed before, as received.</summary>
internal sealed record WrittenStand
{
    public string? Crop { get; init; }

    public string? CoverCrop { get; init; }

    /// <summary>Ids of the species of a mixture of cover crops.</summary>
    public IReadOnlyList<string>? Mixture { get; init; }

    /// <summary>Measured, in lb/acre or kg/ha.</summary>
    public WrittenQuantity? DryMatter { get; init; }

    /// <summary>Cuts of frames, from which the dry matter is reckoned: all dry weight over all area.</summary>
    public IReadOnlyList<WrittenSample>? Samples { get; init; }

    /// <summary>Where nothing was cut: how tall the stand was when killed. Of low confidence; the plan counts no nitrogen on it.</summary>
    public WrittenQuantity? Height { get; init; }

    /// <summary>Ground that a stand of known height covered, %; left out, all of it.</summary>
    public WrittenNumber? CoverPercent { get; init; }

    public WrittenNumber? NitrogenPercent { get; init; }

    public string? Stage { get; init; }

    public string? Killed { get; init; }
}
