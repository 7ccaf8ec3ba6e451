using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>A crop with its published figures.</summary>
internal sealed record CropEntry(
    string Id, string Name, string? LatinName, string Family, string EdiblePart, string SoilContact, string? BoronResponse, bool SensitiveToBoron,
    IReadOnlyList<PublishedValue> Values, IReadOnlyList<RemovalEntry> Removals, CitedAs By) : Sourced(By);
