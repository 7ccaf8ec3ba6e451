using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Materials;

/// <summary>A material that the farm has or can buy, as received.</summary>
internal sealed record WrittenMaterial
{
    public string? Material { get; init; }

    public WrittenPrice? Price { get; init; }

    public WrittenQuantity? OnHand { get; init; }

    public WrittenAnalysis? Analysis { get; init; }
}
