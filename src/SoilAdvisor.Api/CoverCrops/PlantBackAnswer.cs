namespace SoilAdvisor.Api.CoverCrops;

/// <summary>Days kept free between the cover crop and the next crop, and why.</summary>
internal sealed record PlantBackAnswer(int Days, IReadOnlyList<PlantBackReasonAnswer> Reasons);
