using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Planning.MaterialChoice;

/// <summary>A largest rate that several plantings share: a single rate because they are planted on one day, or a cap because it counts for the season.</summary>
/// <param name="Material">Id of the material.</param>
/// <param name="Plantings">The plantings.</param>
/// <param name="Most">The largest rate of all of them together.</param>
internal sealed record SharedLimit(string Material, IReadOnlyList<int> Plantings, MassPerArea Most)
{
    /// <summary>Whether a decision counts here.</summary>
    /// <param name="variable">The decision.</param>
    public bool Counts(MaterialVariable variable) => variable.Offered.Material.Id == Material && Plantings.Contains(variable.PlantingIndex);
}
