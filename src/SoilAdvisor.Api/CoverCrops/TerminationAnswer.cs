using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>Federal termination guidance for ground that is not irrigated.</summary>
internal sealed record TerminationAnswer(int? Zone, string? EndBy, string Text, CitedAs By) : Sourced(By);
