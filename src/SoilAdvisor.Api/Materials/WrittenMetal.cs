using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>One heavy metal of a tested material, as received.</summary>
internal sealed record WrittenMetal
{
    /// <summary>Chemical symbol.</summary>
    public string? Metal { get; init; }

    public WrittenNumber? Value { get; init; }

    /// <summary>mg/kg of dry matter; ppm is the same.</summary>
    public string? Unit { get; init; }
}
