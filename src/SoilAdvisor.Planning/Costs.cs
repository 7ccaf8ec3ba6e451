using SoilAdvisor.Agronomy.Materials;
using UnitsNet;

namespace SoilAdvisor.Planning;

/// <summary>Money of masses. Unrounded; one currency, which the planner has checked.</summary>
internal static class Costs
{
    /// <summary>What a mass of a material costs; null without a price.</summary>
    /// <param name="offered">The material.</param>
    /// <param name="mass">How much.</param>
    public static Money? Of(OfferedMaterial offered, Mass mass) =>
        offered.PricePerKilogram is { } price ? price with { Value = price.Value * (decimal)mass.Kilograms } : null;

    /// <summary>Sum of what has a price; null when nothing has.</summary>
    /// <param name="costs">The costs.</param>
    public static Money? Sum(IEnumerable<Money?> costs)
    {
        Money? sum = null;
        foreach (var cost in costs)
        {
            sum = cost is { } c ? c with { Value = c.Value + (sum?.Value ?? 0) } : sum;
        }

        return sum;
    }
}
