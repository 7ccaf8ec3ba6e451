namespace SoilAdvisor.Api.Answers;

/// <summary>A citation as it is written out: source id, place in it, evidence.</summary>
internal readonly record struct CitedAs(string Source, string? Locator, string Evidence);
