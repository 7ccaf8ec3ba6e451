using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Materials;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Plans;

/// <summary>Asks what to spread on each bed.</summary>
internal sealed record PlanRequest
{
    /// <summary>Name of the farm, echoed.</summary>
    public string? Farm { get; init; }

    public string? Guide { get; init; }

    public string? Region { get; init; }

    /// <summary>Part of the guide's region, where a guide asks for one.</summary>
    public string? Subregion { get; init; }

    public IReadOnlyList<WrittenSoilTest>? SoilTests { get; init; }

    public IReadOnlyList<WrittenBed>? Beds { get; init; }

    /// <summary>What the farm has or can buy; left out, all materials of the tables are open, without prices.</summary>
    public IReadOnlyList<WrittenMaterial>? Materials { get; init; }

    public PlanOptions? Options { get; init; }
}
