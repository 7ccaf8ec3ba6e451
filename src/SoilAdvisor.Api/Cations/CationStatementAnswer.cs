using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Cations;

/// <summary>A sentence about cations with its source.</summary>
internal sealed record CationStatementAnswer(string Id, string Text, CitedAs By) : Sourced(By);
