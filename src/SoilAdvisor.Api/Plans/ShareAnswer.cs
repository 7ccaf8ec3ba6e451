using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Plans;

/// <summary>How much of a material counts as a nutrient in the season, percent by mass as it is spread.</summary>
internal sealed record ShareAnswer(string Nutrient, decimal Percent, decimal PercentHigh, IReadOnlyList<string> Sources, CitedAs By) : Sourced(By);
