using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.SoilTests;

/// <summary>A value with its unit, as received.</summary>
internal sealed record WrittenQuantity
{
    public WrittenNumber? Value { get; init; }

    public string? Unit { get; init; }
}
