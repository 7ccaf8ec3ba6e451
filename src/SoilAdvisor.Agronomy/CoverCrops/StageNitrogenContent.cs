using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>Published nitrogen in the dry matter of a kind of plant at a stage, for where nothing was measured.</summary>
/// <param name="PlantType">annual-legume, perennial-legume, grass-or-brassica or other.</param>
/// <param name="Stage">before-flowering, flowering or mature.</param>
/// <param name="PercentLow">Low end, %.</param>
/// <param name="PercentHigh">High end, %.</param>
/// <param name="Source">Where it stands.</param>
public sealed record StageNitrogenContent(string PlantType, string Stage, decimal PercentLow, decimal PercentHigh, Citation Source);
