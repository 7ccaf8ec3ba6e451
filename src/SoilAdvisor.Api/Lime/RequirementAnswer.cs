using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Lime;

/// <summary>
/// How much lime is needed: the method's own answer with what it counts, and the same as pure, fine calcium carbonate. Method and region stand
/// beside each number, because states differ.
/// </summary>
internal sealed record RequirementAnswer(
    decimal Value, string Unit, string Basis, string Counts, string Method, string? MethodTitle, string? Institution, IReadOnlyList<string> Region,
    decimal SoilPh, decimal TargetPh, string? TargetCrop, Quantity Depth, RateAnswer CalciumCarbonate, CitedAs By) : Sourced(By);
