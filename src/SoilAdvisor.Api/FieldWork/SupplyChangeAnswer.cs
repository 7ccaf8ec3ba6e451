using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.FieldWork;

/// <summary>What rounding changes in the supply of one nutrient.</summary>
internal sealed record SupplyChangeAnswer(string Nutrient, Quantity Change);
