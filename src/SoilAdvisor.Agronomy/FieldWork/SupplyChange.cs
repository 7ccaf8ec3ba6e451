using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.FieldWork;

/// <summary>What rounding an amount changes in the supply of one nutrient.</summary>
/// <param name="Nutrient">The nutrient.</param>
/// <param name="Change">More (above zero) or less (below zero) than planned.</param>
public sealed record SupplyChange(Nutrient Nutrient, MassPerArea Change);
