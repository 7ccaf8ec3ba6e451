namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>When a projection reaches a level. Both errors at their worst make the ends, so they are wider than the band.</summary>
/// <param name="Likely">Years, zero or more; null: never at this pace.</param>
/// <param name="Earliest">Earliest, years; null: never.</param>
/// <param name="Latest">Latest, years; null: perhaps never.</param>
public sealed record YearsToLevel(double? Likely, double? Earliest, double? Latest);
