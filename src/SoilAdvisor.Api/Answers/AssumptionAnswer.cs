namespace SoilAdvisor.Api.Answers;

/// <summary>Something taken as true that nobody stated.</summary>
internal sealed record AssumptionAnswer(string Code, string Text, CitedAs By) : Sourced(By);
