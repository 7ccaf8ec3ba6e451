using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Lime;

/// <summary>How much neutralising value is needed: the method's own answer, and the same as pure calcium carbonate.</summary>
internal sealed record RequirementAnswer(
    decimal Value, string Unit, string Basis, string Method, decimal SoilPh, decimal TargetPh, string? TargetCrop, Quantity Depth, RateAnswer CalciumCarbonate, CitedAs By) : Sourced(By);
