using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>The conductivity of a tested material, as received.</summary>
internal sealed record WrittenSalt
{
    public WrittenNumber? Value { get; init; }

    /// <summary>dS/m; mmho/cm and mS/cm are the same.</summary>
    public string? Unit { get; init; }

    /// <summary>saturated-paste, 1:2 or 1:5, as the laboratory reports it.</summary>
    public string? Extract { get; init; }
}
