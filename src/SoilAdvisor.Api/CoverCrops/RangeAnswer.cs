using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>A range on ground and what it rests on.</summary>
internal sealed record RangeAnswer(decimal Low, decimal High, string Unit, string Basis, CitedAs By) : Sourced(By);
