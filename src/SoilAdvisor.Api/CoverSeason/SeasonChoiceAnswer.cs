namespace SoilAdvisor.Api.CoverSeason;

/// <summary>A cover crop with its points on a bed.</summary>
internal sealed record SeasonChoiceAnswer(string CoverCrop, string Name, decimal Points);
