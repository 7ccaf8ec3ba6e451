namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>A depth as printed: in or cm.</summary>
internal sealed record DepthDocument(decimal Value, string Unit);
