using SoilAdvisor.Api.Materials;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Beds;

/// <summary>What was spread on a bed already, as received.</summary>
internal sealed record WrittenApplied
{
    public string? Material { get; init; }

    public WrittenAnalysis? Analysis { get; init; }

    /// <summary>On the whole bed.</summary>
    public WrittenQuantity? Amount { get; init; }

    public string? Date { get; init; }

    public string? Incorporated { get; init; }
}
