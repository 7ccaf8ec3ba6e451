using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.NitrogenSupply;

/// <summary>One dressing: timing base, sidedress or season.</summary>
internal sealed record DressingAnswer(string Timing, string When, string? From, string? To, QuantityRange Wanted, IReadOnlyList<DressingPartAnswer> Materials, CitedAs By) : Sourced(By);
