using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.SeedRates;

/// <summary>Asks how much seed of one cover crop or of a mixture to weigh out.</summary>
internal sealed record SeedRequest
{
    /// <summary>drilled, broadcast (worked in) or surface; left out, broadcast, which is then said.</summary>
    public string? Sowing { get; init; }

    public WrittenQuantity? Area { get; init; }

    /// <summary>One to four.</summary>
    public IReadOnlyList<WrittenSpecies>? Species { get; init; }
}
