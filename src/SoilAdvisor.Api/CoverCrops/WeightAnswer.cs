namespace SoilAdvisor.Api.CoverCrops;

/// <summary>How heavily a kind of reason counted.</summary>
internal sealed record WeightAnswer(string Kind, decimal Weight);
