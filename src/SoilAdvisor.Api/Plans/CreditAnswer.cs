using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Plans;

/// <summary>What the bed already has coming; the plan counts the low end.</summary>
internal sealed record CreditAnswer(string Nutrient, string From, QuantityRange Amount, string? Timing, CitedAs By) : Sourced(By);
