using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>One reason for or against, with its points.</summary>
internal sealed record CoverCropReasonAnswer(string Text, decimal Points, CitedAs By) : Sourced(By);
