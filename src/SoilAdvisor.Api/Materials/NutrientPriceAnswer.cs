using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Materials;

/// <summary>What a pound (a kilogram) of one nutrient costs when the whole price is put on it.</summary>
internal sealed record NutrientPriceAnswer(string Nutrient, decimal Percent, decimal PercentHigh, PriceAnswer Cost, PriceAnswer CostAtHighEnd, CitedAs By) : Sourced(By);
