using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>One class with its printed limits; where they move with the exchange capacity, by how much for each meq/100 g.</summary>
internal sealed record GuideClassEntry(
    string Class, string Standing, bool StandingIsOurs, decimal? Lower, bool LowerIncluded, decimal? Upper, bool UpperIncluded, decimal? LowerPerCec, decimal? UpperPerCec, CitedAs By)
    : Sourced(By);
