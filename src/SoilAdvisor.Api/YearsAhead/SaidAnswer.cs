using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.YearsAhead;

/// <summary>A sentence with its source.</summary>
internal sealed record SaidAnswer(string Text, CitedAs By) : Sourced(By);
