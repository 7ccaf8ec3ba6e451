using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Sampling;

/// <summary>Which beds may be sampled together.</summary>
/// <param name="Composites">Ids of the beds of each composite, in the order received.</param>
/// <param name="Apart">Every pair that may not, with its reasons.</param>
/// <param name="Assumptions">What was taken for granted.</param>
public sealed record CompositePlan(IReadOnlyList<IReadOnlyList<string>> Composites, IReadOnlyList<BedsApart> Apart, IReadOnlyList<Assumption> Assumptions);
