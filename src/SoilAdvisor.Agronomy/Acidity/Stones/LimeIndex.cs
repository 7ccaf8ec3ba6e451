using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>
/// One state's index of what a liming material is worth: neutralising value times fineness, and dryness where the state counts it. An index
/// belongs to its state's recommendation; it is never put on top of another, nor on a neutralising value.
/// </summary>
/// <param name="Id">Permanent kebab-case id, for example iowa-ecce.</param>
/// <param name="Title">Its name.</param>
/// <param name="Regions">ISO 3166-2 codes where it is the rule; empty for none named.</param>
/// <param name="FormulaId">Id of its formula in the catalogue; null where the rule is not held and only a label can give the score.</param>
/// <param name="ByClass">True when its fineness is worked from size classes, false when from what passes each sieve.</param>
/// <param name="CountsMoisture">True when the state takes the water off.</param>
/// <param name="Unit">lb/ton or %.</param>
/// <param name="Whole">What pure, fine, dry stone scores in that unit.</param>
/// <param name="LegalMinimum">Least that may be sold, in that unit; null for none held.</param>
/// <param name="Counts">Which requirements in effective lime a stone scored by it meets.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Note">Remark; null for none.</param>
public sealed record LimeIndex(
    string Id,
    string Title,
    IReadOnlyList<string> Regions,
    string? FormulaId,
    bool ByClass,
    bool CountsMoisture,
    string Unit,
    double Whole,
    double? LegalMinimum,
    EffectiveLimeIndex Counts,
    Citation Source,
    string? Note)
{
    /// <summary>What a score in this index's unit is worth: effective lime in one unit of mass of the stone.</summary>
    /// <param name="score">The score, in the index's unit.</param>
    internal MassShare ShareOf(double score) => MassShare.FromFraction(score / Whole);
}
