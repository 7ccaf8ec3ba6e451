namespace SoilAdvisor.Api.CoverCrops;

/// <summary>When to sow, when it is useful and flowers, when to end it at the latest, what winter does to it, and when the next crop may follow.</summary>
internal sealed record CoverCropDatesAnswer(string Sow, string SowBy, string Ready, string? Flowers, string KillBy, string PlantFrom, string Winter, string? DiesAbout);
