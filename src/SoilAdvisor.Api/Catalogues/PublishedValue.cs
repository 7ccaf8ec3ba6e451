using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>One published figure or statement, as printed.</summary>
internal sealed record PublishedValue(string Property, decimal? Value, decimal? Low, decimal? High, string Unit, string? Text, string? Note, CitedAs By) : Sourced(By);
