using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>What passes one sieve, cumulative, as received.</summary>
internal sealed record WrittenSieve
{
    /// <summary>Sieve number: openings to the inch.</summary>
    public WrittenNumber? Sieve { get; init; }

    /// <summary>Percent by mass that passes.</summary>
    public WrittenNumber? Passing { get; init; }
}
