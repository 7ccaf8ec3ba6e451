namespace SoilAdvisor.Api.CoverCrops;

/// <summary>A free time.</summary>
internal sealed record GapAnswer(string From, string To, int Days);
