using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Plans;

/// <summary>The limit that a rate has reached, and why there is one.</summary>
internal sealed record CapAnswer(Quantity Most, string Reason, CitedAs By) : Sourced(By);
