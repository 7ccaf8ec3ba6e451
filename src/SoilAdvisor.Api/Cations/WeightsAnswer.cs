using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Cations;

/// <summary>How much of each cation carries one milliequivalent.</summary>
internal sealed record WeightsAnswer(string Id, string Title, string Unit, decimal Ca, decimal Mg, decimal K, decimal Na, CitedAs By) : Sourced(By);
