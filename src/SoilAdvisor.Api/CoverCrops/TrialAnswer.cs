using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>What a trial found.</summary>
internal sealed record TrialAnswer(string Subject, string Says, string Setting, string Text, CitedAs By) : Sourced(By);
