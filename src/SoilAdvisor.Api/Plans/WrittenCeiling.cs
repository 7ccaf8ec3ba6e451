using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Plans;

/// <summary>Most of one nutrient on every bed, as received.</summary>
internal sealed record WrittenCeiling
{
    /// <summary>N, P2O5 (available), total P2O5, K2O, Ca, Mg, S, Na, Cl, C or CaCO3.</summary>
    public string? Nutrient { get; init; }

    public WrittenNumber? Value { get; init; }

    /// <summary>lb/acre, lb/1000-sq-ft, lb/100-sq-ft, kg/ha, ton/acre or t/ha.</summary>
    public string? Unit { get; init; }

    /// <summary>Whose limit it is and why, echoed.</summary>
    public string? Reason { get; init; }
}
