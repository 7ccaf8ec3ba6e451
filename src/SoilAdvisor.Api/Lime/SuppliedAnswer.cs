using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Lime;

/// <summary>A nutrient that comes with the stone.</summary>
internal sealed record SuppliedAnswer(string Nutrient, RateAnswer Rate);
