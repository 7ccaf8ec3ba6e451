using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Lime;

/// <summary>A sentence with its source.</summary>
internal sealed record LimeStatementAnswer(string Text, CitedAs By) : Sourced(By);
