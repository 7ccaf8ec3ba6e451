using SoilAdvisor.Agronomy.Materials;
using UnitsNet;

namespace SoilAdvisor.Planning;

/// <summary>A material that the farm lists.</summary>
/// <param name="Material">The material.</param>
/// <param name="Tested">What its label or a laboratory says of it; null takes the table's figures.</param>
/// <param name="PricePerKilogram">Price; null: on hand, its cost is not counted, and that is said.</param>
/// <param name="OnHand">Stock on the shelf; null when not said. It lowers what is bought, not what is spread.</param>
public sealed record MaterialOffer(Material Material, GrowerAnalysis? Tested, Money? PricePerKilogram, Mass? OnHand)
{
    /// <summary>The pack or load that is sold whole; null when any amount can be had.</summary>
    public Mass? Pack { get; init; }

    /// <summary>Cost of delivery, paid once when any of it is bought; null for none.</summary>
    public Money? Freight { get; init; }

    /// <summary>Where the farm has it from.</summary>
    public MaterialOrigin Origin { get; init; }

    /// <summary>Largest rate that a certifier or the grower allows; null for none.</summary>
    public RateCap? Most { get; init; }

    /// <summary>Largest rates that a test of it sets; empty for none.</summary>
    public IReadOnlyList<RateCap> TestCaps { get; init; } = [];
}
