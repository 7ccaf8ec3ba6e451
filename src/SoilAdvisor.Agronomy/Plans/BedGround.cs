using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>The ground of a bed that is spread.</summary>
/// <param name="Area">How large; above zero.</param>
/// <param name="Spread">Which ground it is.</param>
/// <param name="Shown">How it was found, in words with units, for example "30 in × 100 ft = 250 sq ft".</param>
/// <param name="Assumptions">What was assumed.</param>
public sealed record BedGround(Area Area, SpreadBasis Spread, string Shown, IReadOnlyList<Assumption> Assumptions);
