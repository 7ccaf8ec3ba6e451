using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>
/// How finely a stone is ground, as a label or laboratory reports it. The two ways of reporting, cumulative and by class, are two types;
/// either can be read as the other by exact subtraction or addition, never by taking one for the other.
/// </summary>
public interface ISieveAnalysis
{
    /// <summary>What passes a sieve; null when the analysis does not say.</summary>
    /// <param name="mesh">Sieve number: openings to the inch.</param>
    PassingShare? Passing(int mesh);

    /// <summary>What passes one sieve and stays on a finer one; null when the analysis does not say.</summary>
    /// <param name="passing">The coarser sieve.</param>
    /// <param name="retainedOn">The finer sieve.</param>
    SieveClassShare? Between(int passing, int retainedOn);

    /// <summary>What was noticed in it, for example classes that do not add up to 100 %.</summary>
    IReadOnlyList<Assumption> Noticed { get; }
}
