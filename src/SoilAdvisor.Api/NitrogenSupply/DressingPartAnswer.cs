using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.NitrogenSupply;

/// <summary>One material in one dressing.</summary>
internal sealed record DressingPartAnswer(string Material, string Name, RateAnswer Rate, Quantity PerBed, QuantityRange Nitrogen, string? SpreadBy, CitedAs By) : Sourced(By);
