namespace SoilAdvisor.Api.Answers;

/// <summary>What made an answer: the same request and versions give the same bytes.</summary>
internal sealed record Versions(string Api, string Tables, string Engine);
