using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Plans;

/// <summary>An amount by volume, with the source of the density.</summary>
internal sealed record VolumeAnswer(decimal Value, string Unit, CitedAs By) : Sourced(By);
