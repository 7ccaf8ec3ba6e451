using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Materials;

/// <summary>A price for an amount, as received.</summary>
internal sealed record WrittenPrice
{
    public WrittenNumber? Value { get; init; }

    /// <summary>ISO 4217, for example USD.</summary>
    public string? Currency { get; init; }

    public WrittenQuantity? Per { get; init; }
}
