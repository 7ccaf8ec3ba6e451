namespace SoilAdvisor.Api.Cations;

/// <summary>One cation's part of the exchange, and the ranges that laboratories print beside it for information.</summary>
internal sealed record CationShareAnswer(string Cation, decimal Charge, decimal Saturation, IReadOnlyList<ReferenceSaturationAnswer>? References);
