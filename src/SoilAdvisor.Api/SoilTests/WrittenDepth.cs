using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.SoilTests;

/// <summary>A sampled layer, as received.</summary>
internal sealed record WrittenDepth
{
    public WrittenNumber? From { get; init; }

    public WrittenNumber? To { get; init; }

    /// <summary>in or cm.</summary>
    public string? Unit { get; init; }
}
