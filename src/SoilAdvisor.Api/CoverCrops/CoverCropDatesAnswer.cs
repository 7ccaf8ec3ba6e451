namespace SoilAdvisor.Api.CoverCrops;

/// <summary>When to sow at the earliest and to end it at the latest.</summary>
internal sealed record CoverCropDatesAnswer(string Sow, string KillBy);
