using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Materials;

/// <summary>A material as the farm can have it: from the table or analysed, with or without a price and a stock.</summary>
/// <param name="Material">The material.</param>
/// <param name="Analysis">What one unit of mass supplies in the season, low end: share of each nutrient by mass (0 to 1; nitrogen may be below 0).</param>
/// <param name="PricePerKilogram">Price per kilogram; null when none was given, and none is ever assumed.</param>
/// <param name="OnHand">Stock on the shelf; null when not said.</param>
/// <param name="Listed">True when the user listed it.</param>
/// <param name="LargestSingleRate">Largest rate in one spreading.</param>
/// <param name="WaitBeforeSowingDays">Days between spreading and sowing.</param>
public sealed record OfferedMaterial(
    Material Material,
    MaterialAnalysis Analysis,
    Money? PricePerKilogram,
    Mass? OnHand,
    bool Listed,
    MassPerArea LargestSingleRate,
    int WaitBeforeSowingDays)
{
    /// <summary>The pack or load that is sold whole; null when any amount can be had.</summary>
    public Mass? Pack { get; init; }

    /// <summary>Cost of delivery, paid once when any of it is bought; null for none.</summary>
    public Money? Freight { get; init; }

    /// <summary>Where the farm has it from.</summary>
    public MaterialOrigin Origin { get; init; }

    /// <summary>Limits beside the largest single rate; empty for none.</summary>
    public IReadOnlyList<RateCap> Caps { get; init; } = [];

    /// <summary>The tightest of the caps; null for none.</summary>
    public RateCap? TightestCap => Caps.MinBy(c => c.Most);
}
