using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Plans;

/// <summary>Floor, ceiling and supply of one nutrient over the season.</summary>
internal sealed record BalanceAnswer(string Nutrient, Quantity? Floor, Quantity? Ceiling, string? CeilingReason, Quantity Supplied, Quantity SuppliedHigh, CitedAs By) : Sourced(By);
