using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Materials.Prices;

/// <summary>What the nutrients of a priced material cost.</summary>
/// <param name="Offered">The material.</param>
/// <param name="PerPound">Price of a pound of the material.</param>
/// <param name="Nutrients">Price of a pound of each nutrient that counts in the season; empty for none.</param>
/// <param name="Working">The arithmetic.</param>
public sealed record MaterialPrice(OfferedMaterial Offered, Money PerPound, IReadOnlyList<NutrientPrice> Nutrients, IReadOnlyList<WorkingLine> Working)
{
    /// <summary>True where the same price is put on each of several nutrients, so that they must not be added.</summary>
    public bool HoldsSeveral => Nutrients.Count > 1;
}
