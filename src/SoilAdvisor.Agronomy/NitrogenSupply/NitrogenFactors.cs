using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>The published factors that a laboratory's forms of nitrogen are read with.</summary>
/// <param name="Release">The publication's row for organic nitrogen; its first year is known.</param>
/// <param name="KeptLow">Part of the ammonium kept, low end: counted on.</param>
/// <param name="KeptHigh">The same, high end.</param>
/// <param name="KeptSource">Where it stands.</param>
/// <param name="Assumptions">Whose factors, why theirs, and how the manure is taken to be spread.</param>
public sealed record NitrogenFactors(
    OrganicRelease Release,
    ShareOf<AmmoniumN> KeptLow,
    ShareOf<AmmoniumN> KeptHigh,
    Citation KeptSource,
    IReadOnlyList<Assumption> Assumptions)
{
    /// <summary>Part of the organic nitrogen that comes in the first year.</summary>
    public ShareOf<OrganicN> FirstYear => Release.InYear(1)!.Value;
}
