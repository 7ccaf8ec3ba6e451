using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>An index that a guide computes from several readings: its formula, what it needs, and its own scales; none where only a limit of law is tied to it.</summary>
internal sealed record GuideIndexEntry(
    string Id, string Title, string About, string Formula, IReadOnlyList<GuideIndexInputEntry> Inputs, IReadOnlyList<GuideScaleEntry> Scales, CitedAs By) : Sourced(By);
