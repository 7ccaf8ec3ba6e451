using SoilAdvisor.Agronomy.Materials;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>What was already spread on a bed since the sample, or shortly before it.</summary>
/// <param name="Material">The material.</param>
/// <param name="Analysis">What it supplies.</param>
/// <param name="Amount">Mass on the whole bed.</param>
/// <param name="Date">Day of spreading.</param>
/// <param name="Incorporated">Day it was worked in; null when not said.</param>
public sealed record AppliedMaterial(Material Material, MaterialAnalysis Analysis, Mass Amount, DateOnly Date, DateOnly? Incorporated);
