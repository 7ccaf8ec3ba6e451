using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Materials;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Checks;

/// <summary>Asks whether a bed's records meet an organic standard.</summary>
internal sealed record CheckRequest
{
    /// <summary>Part of the standard's name; left out, the standard that the tables hold.</summary>
    public string? Standard { get; init; }

    public string? Guide { get; init; }

    public string? Region { get; init; }

    /// <summary>Day of the check; left out, the day of the request.</summary>
    public string? Date { get; init; }

    public WrittenSoilTest? SoilTest { get; init; }

    public WrittenBed? Bed { get; init; }

    /// <summary>Materials on the shelf.</summary>
    public IReadOnlyList<WrittenMaterial>? Materials { get; init; }
}
