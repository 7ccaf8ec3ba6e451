using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>A largest rate of a material and who sets it, as received.</summary>
internal sealed record WrittenCap
{
    public WrittenNumber? Value { get; init; }

    /// <summary>lb/acre, ton/acre, lb/1000-sq-ft, lb/100-sq-ft, kg/ha or t/ha.</summary>
    public string? Unit { get; init; }

    /// <summary>Whose limit it is and why, echoed.</summary>
    public string? Reason { get; init; }
}
