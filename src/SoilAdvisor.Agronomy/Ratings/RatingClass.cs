using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>One class of a scale, with its printed limits in the scale's unit.</summary>
/// <param name="Name">The guide's printed name.</param>
/// <param name="Standing">Where it stands in our words.</param>
/// <param name="StandingIsOurs">True when the standing is our reading of the class, false when the guide says so itself.</param>
/// <param name="Lower">Lower limit; null for open below.</param>
/// <param name="LowerIncluded">Whether the limit itself belongs to the class.</param>
/// <param name="Upper">Upper limit; null for open above.</param>
/// <param name="UpperIncluded">Whether the limit itself belongs to the class.</param>
/// <param name="LowerPerCec">Added to the lower limit per meq/100 g of exchange capacity; 0 for most guides.</param>
/// <param name="UpperPerCec">Added to the upper limit per meq/100 g of exchange capacity; 0 for most guides.</param>
/// <param name="Source">Where the limits stand.</param>
public sealed record RatingClass(
    string Name,
    Standing Standing,
    bool StandingIsOurs,
    decimal? Lower,
    bool LowerIncluded,
    decimal? Upper,
    bool UpperIncluded,
    decimal LowerPerCec,
    decimal UpperPerCec,
    Citation Source);
