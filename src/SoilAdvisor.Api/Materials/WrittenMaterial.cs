using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Materials;

/// <summary>A material that the farm has or can buy, as received.</summary>
internal sealed record WrittenMaterial
{
    public string? Material { get; init; }

    public WrittenPrice? Price { get; init; }

    public WrittenQuantity? OnHand { get; init; }

    /// <summary>The pack or load that is sold whole; left out, any amount can be had.</summary>
    public WrittenQuantity? Pack { get; init; }

    /// <summary>Cost of delivery, paid once when any of it is bought.</summary>
    public WrittenMoney? Freight { get; init; }

    /// <summary>own, local or bought; left out, bought.</summary>
    public string? Origin { get; init; }

    /// <summary>Largest rate that a certifier or the grower allows on one area in one plan.</summary>
    public WrittenCap? Most { get; init; }

    public WrittenAnalysis? Analysis { get; init; }
}
