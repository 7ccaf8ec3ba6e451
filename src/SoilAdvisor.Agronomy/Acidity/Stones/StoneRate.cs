using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>How much of a stone carries a requirement, and by which rule.</summary>
/// <param name="Rate">The stone as spread.</param>
/// <param name="Effective">Its effective value where the rule takes one; null where the neutralising value alone is taken.</param>
/// <param name="Said">The rule in one sentence.</param>
/// <param name="Source">Where the rule stands.</param>
/// <param name="Noticed">What was assumed on the way.</param>
public sealed record StoneRate(MassPerArea Rate, EffectiveValue? Effective, string Said, Citation Source, IReadOnlyList<Assumption> Noticed);
