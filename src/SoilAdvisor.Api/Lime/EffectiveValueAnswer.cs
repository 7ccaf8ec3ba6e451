using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Lime;

/// <summary>What a stone is worth by one index: score in its own unit, and the part of the stone that counts.</summary>
internal sealed record EffectiveValueAnswer(string Index, string Title, string? Formula, decimal Value, string Unit, decimal Percent, CitedAs By) : Sourced(By);
