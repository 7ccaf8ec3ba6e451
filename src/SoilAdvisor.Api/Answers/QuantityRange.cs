namespace SoilAdvisor.Api.Answers;

/// <summary>A published range; one printed number has both ends equal.</summary>
internal sealed record QuantityRange(decimal Low, decimal High, string Unit);
