using SoilAdvisor.Agronomy.Ratings;

namespace SoilAdvisor.Planning;

/// <summary>The guide that a plan is read with.</summary>
/// <param name="Guide">The guide.</param>
/// <param name="Reason">Why, in one plain sentence.</param>
/// <param name="Others">Ids of the other guides that cover the tests' methods, nearest first.</param>
public sealed record GuideSelection(Guide Guide, string Reason, IReadOnlyList<string> Others);
