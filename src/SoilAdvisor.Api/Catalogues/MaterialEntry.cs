using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>A material with its published figures and cautions.</summary>
internal sealed record MaterialEntry(
    string Id, string Name, string Category, string Basis, string Manure, string OrganicStatus, string OrganicRule, bool CountedInSeason,
    IReadOnlyList<string> NeverWith, IReadOnlyList<PublishedValue> Values, IReadOnlyList<CautionEntry> Cautions, string? Note, CitedAs By) : Sourced(By);
