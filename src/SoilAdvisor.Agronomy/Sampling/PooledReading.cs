using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Sampling;

/// <summary>Two results of one block as one.</summary>
/// <param name="Reading">The pooled reading, in the first test's unit: rate it like any other.</param>
/// <param name="Spread">Its spread, narrower than that of either.</param>
/// <param name="Assumptions">What it rests on.</param>
public sealed record PooledReading(Reading Reading, ResultSpread Spread, IReadOnlyList<Assumption> Assumptions);
