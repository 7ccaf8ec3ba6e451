using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Planning;

/// <summary>How one guide reads a soil test, to stand beside other guides.</summary>
/// <param name="Guide">The guide.</param>
/// <param name="Ratings">What it rates, in the order of the test.</param>
/// <param name="Refused">What it cannot rate, and why.</param>
public sealed record GuideView(Guide Guide, IReadOnlyList<Rating> Ratings, IReadOnlyList<(Reading Reading, Refusal Refusal)> Refused);
