using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>What a stone is worth by one state's index.</summary>
/// <param name="Index">The index.</param>
/// <param name="Score">The score in the index's unit.</param>
/// <param name="Noticed">What was noticed or assumed on the way.</param>
public sealed record EffectiveValue(LimeIndex Index, double Score, IReadOnlyList<Assumption> Noticed)
{
    /// <summary>Effective lime in one unit of mass of the stone.</summary>
    public MassShare Share => Index.ShareOf(Score);
}
