namespace SoilAdvisor.Api.CoverCrops;

/// <summary>From so many to so many percent.</summary>
internal sealed record PercentRange(decimal Low, decimal High);
