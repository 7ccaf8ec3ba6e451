using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Materials;

/// <summary>What the nutrients of a priced material cost. Each figure carries the whole price: they are never added.</summary>
internal sealed record MaterialPriceAnswer(string Material, string Name, PriceAnswer Price, IReadOnlyList<NutrientPriceAnswer> Nutrients, string? Note, IReadOnlyList<WorkingLineAnswer>? Working, CitedAs By) : Sourced(By);
