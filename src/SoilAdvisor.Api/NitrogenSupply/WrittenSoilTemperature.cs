using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.NitrogenSupply;

/// <summary>Mean soil temperature of each month, as received.</summary>
internal sealed record WrittenSoilTemperature
{
    /// <summary>C or F.</summary>
    public string? Unit { get; init; }

    /// <summary>Twelve means, January first.</summary>
    public IReadOnlyList<WrittenNumber>? Monthly { get; init; }
}
