using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>One reason for or against: its grade times its weight are its points.</summary>
internal sealed record CoverCropReasonAnswer(string Kind, string Text, decimal Grade, decimal Weight, decimal Points, CitedAs By) : Sourced(By);
