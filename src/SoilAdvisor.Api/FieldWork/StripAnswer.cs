using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.FieldWork;

/// <summary>What a strip should get of one material.</summary>
internal sealed record StripAnswer(string Material, string Name, RateAnswer Rate, IReadOnlyList<string> Beds, Quantity Target, Quantity RatePerPound, CitedAs By) : Sourced(By);
