namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>A source of the bibliography and the place inside it.</summary>
internal sealed record SourceReference(string Id, string? Locator);
