using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>A cover crop with its published figures.</summary>
internal sealed record CoverCropEntry(
    string Id, string Name, string? LatinName, string Family, string LifeCycle, string Season, IReadOnlyList<PublishedValue> Values, CitedAs By) : Sourced(By);
