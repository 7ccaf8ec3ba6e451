using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.SeedRates;

/// <summary>One inoculant and the legumes that it serves.</summary>
internal sealed record InoculantAnswer(string Group, IReadOnlyList<string> CoverCrops, CitedAs By) : Sourced(By);
