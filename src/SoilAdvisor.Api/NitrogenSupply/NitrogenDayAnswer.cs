using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.NitrogenSupply;

/// <summary>The account on one day.</summary>
internal sealed record NitrogenDayAnswer(string? Date, int? DaysAfterPlanting, string What, QuantityRange Released, QuantityRange Wanted, CitedAs By) : Sourced(By);
