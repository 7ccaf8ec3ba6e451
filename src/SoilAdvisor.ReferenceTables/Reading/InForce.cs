namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>Since when a publication holds; null where that is not printed.</summary>
internal sealed record InForce(string? From);
