using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Plans;

/// <summary>Totals over all beds; partial when a bed is refused or only partly planned.</summary>
internal sealed record TotalsAnswer(bool Partial, MoneyAnswer? Cost, CitedAs By) : Sourced(By);
