using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>A guide with its scales, the indices that it computes and the limits of law that it prints.</summary>
internal sealed record GuideEntry(
    string Id, string Title, string Institution, IReadOnlyList<string> Regions, string Crops, string CalibratedOn, string? Notes,
    IReadOnlyList<string> RateTables, IReadOnlyList<GuideScaleEntry> Scales,
    IReadOnlyList<GuideIndexEntry> Indices, IReadOnlyList<GuideCeilingEntry> Ceilings, CitedAs By) : Sourced(By);
