using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>What materials spread since the sample already supply.</summary>
/// <param name="Credits">One credit a material and nutrient.</param>
/// <param name="Assumptions">What was assumed.</param>
public sealed record AppliedCredit(IReadOnlyList<NutrientCredit> Credits, IReadOnlyList<Assumption> Assumptions);
