using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Rulers;

/// <summary>One rating as a line of a table.</summary>
/// <param name="Rating">The rating.</param>
/// <param name="HowSure">The class with its probability in words; null where no spread is published.</param>
/// <param name="Whisker">Between which values the soil's true value likely lies; null where it is not known.</param>
/// <param name="Sources">Where its numbers stand.</param>
/// <param name="Sample">The soil test and its beds, where several stand in one table; null in a table of one bed.</param>
internal sealed record RatedLine(Rating Rating, string? HowSure, Whisker? Whisker, IReadOnlyList<Citation> Sources, string? Sample = null);
