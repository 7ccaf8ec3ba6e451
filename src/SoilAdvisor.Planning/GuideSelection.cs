using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Planning;

/// <summary>The guide that a plan is read with.</summary>
/// <param name="Guide">The guide.</param>
/// <param name="Reason">Why, and why the next one lost, in plain sentences.</param>
/// <param name="Others">Ids of the other guides that cover the tests' methods, nearest first.</param>
/// <param name="Assumptions">What is assumed by taking it, such as field-crop limits for vegetables; empty for none.</param>
public sealed record GuideSelection(Guide Guide, string Reason, IReadOnlyList<string> Others, IReadOnlyList<Assumption> Assumptions);
