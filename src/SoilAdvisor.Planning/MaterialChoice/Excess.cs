using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Planning.MaterialChoice;

/// <summary>Supply of a nutrient above what is needed, over the season: allowed, and kept small.</summary>
/// <param name="Nutrient">The nutrient.</param>
/// <param name="Above">What materials may supply before it counts as excess.</param>
internal sealed record Excess(Nutrient Nutrient, MassPerArea Above);
