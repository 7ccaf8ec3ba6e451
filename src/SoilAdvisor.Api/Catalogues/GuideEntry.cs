using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>A guide with its scales.</summary>
internal sealed record GuideEntry(
    string Id, string Title, string Institution, IReadOnlyList<string> Regions, string Crops, string CalibratedOn, string? Notes,
    IReadOnlyList<string> RateTables, IReadOnlyList<GuideScaleEntry> Scales, CitedAs By) : Sourced(By);
