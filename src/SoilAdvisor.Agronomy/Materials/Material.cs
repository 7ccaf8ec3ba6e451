using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Materials;

/// <summary>Anything spread on a bed.</summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Category">animal-meal, plant-meal, manure, processed-manure, compost, mineral, lime, micronutrient, liquid, mulch, conditioner or prohibited.</param>
/// <param name="Basis">as-sold, as-spread or dry: what its percentages refer to.</param>
/// <param name="Manure">Manure in it, and its treatment.</param>
/// <param name="Status">What the organic standard says.</param>
/// <param name="Rule">Section of the standard.</param>
/// <param name="CountedInSeason">False for rock powders whose nutrients do not come in one season.</param>
/// <param name="NeverWith">Ids or categories it is never spread with in one pass.</param>
/// <param name="Values">Published figures; the first of a property is used, the others compete.</param>
/// <param name="Cautions">Cautions.</param>
/// <param name="Source">Where the row stands.</param>
/// <param name="Note">Remark; null for none.</param>
public sealed record Material(
    string Id,
    string Name,
    string Category,
    string Basis,
    ManureKind Manure,
    OrganicStatus Status,
    string Rule,
    bool CountedInSeason,
    IReadOnlyList<string> NeverWith,
    IReadOnlyList<MaterialValue> Values,
    IReadOnlyList<Caution> Cautions,
    Citation Source,
    string? Note)
{
    /// <summary>The figure used for a property; null when none is held.</summary>
    /// <param name="property">Kebab-case property.</param>
    public MaterialValue? ValueOf(string property) => Values.FirstOrDefault(v => v.Property == property);
}
