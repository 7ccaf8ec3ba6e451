using SoilAdvisor.Api.Materials;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.CoverSeason;

/// <summary>Seed that the farm has or can buy, as received.</summary>
internal sealed record WrittenSeed
{
    public string? CoverCrop { get; init; }

    public WrittenQuantity? OnHand { get; init; }

    /// <summary>false uses no more than what is on hand; left out, it can be bought.</summary>
    public bool? Buy { get; init; }

    /// <summary>The pack that is sold whole; left out, any amount can be had.</summary>
    public WrittenQuantity? Pack { get; init; }

    public WrittenPrice? Price { get; init; }
}
