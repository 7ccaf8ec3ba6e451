namespace SoilAdvisor.Api.Answers;

/// <summary>A sentence with its source.</summary>
internal sealed record SaidAnswer(string Text, CitedAs By) : Sourced(By);
