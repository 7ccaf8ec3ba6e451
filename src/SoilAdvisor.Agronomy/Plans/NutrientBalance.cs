using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>Need, credits and supply of one nutrient on one bed, season total.</summary>
/// <param name="Nutrient">The nutrient.</param>
/// <param name="Floor">What the plan must supply: need less credits, low end; null without a need.</param>
/// <param name="Ceiling">What it must not exceed; null without one.</param>
/// <param name="CeilingReason">Why there is a ceiling; null without one.</param>
/// <param name="Supplied">What materials and lime supply, as planned (low end).</param>
/// <param name="SuppliedHigh">The same at the high end of published availability.</param>
public sealed record NutrientBalance(Nutrient Nutrient, MassPerArea? Floor, MassPerArea? Ceiling, string? CeilingReason, MassPerArea Supplied, MassPerArea SuppliedHigh);
