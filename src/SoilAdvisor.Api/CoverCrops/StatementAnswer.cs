using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>A published statement in our words.</summary>
internal sealed record StatementAnswer(string Text, CitedAs By) : Sourced(By);
