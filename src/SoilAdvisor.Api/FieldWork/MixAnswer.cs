using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.FieldWork;

/// <summary>Materials that may be mixed for beds that get them in the same proportion.</summary>
internal sealed record MixAnswer(string? SpreadBy, IReadOnlyList<MixPartAnswer> Parts, Quantity Weight, IReadOnlyList<MixPortionAnswer> Portions, Quantity Left, CitedAs By) : Sourced(By);
