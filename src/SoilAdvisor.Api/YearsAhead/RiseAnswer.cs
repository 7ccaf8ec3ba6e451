namespace SoilAdvisor.Api.YearsAhead;

/// <summary>A rise of a soil test with the ends that the analysis and the soil leave open.</summary>
internal sealed record RiseAnswer(decimal Low, decimal Likely, decimal High, string Unit);
