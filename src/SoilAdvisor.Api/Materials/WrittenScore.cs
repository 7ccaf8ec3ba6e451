using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>An effective value that the label prints, as received.</summary>
internal sealed record WrittenScore
{
    /// <summary>Id of the index, for example ohio-enp.</summary>
    public string? Index { get; init; }

    /// <summary>In the unit of the index: lb/ton or percent.</summary>
    public WrittenNumber? Value { get; init; }
}
