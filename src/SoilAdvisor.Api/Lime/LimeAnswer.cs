using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Lime;

/// <summary>A lime requirement and the stones that meet it.</summary>
internal sealed record LimeAnswer(
    RequirementAnswer Requirement,
    IReadOnlyList<LimeChoiceAnswer> Choices,
    IReadOnlyList<string> Warnings,
    IReadOnlyList<WorkingLineAnswer>? Working,
    IReadOnlyList<Fault>? Refused,
    IReadOnlyList<AssumptionAnswer> Assumptions,
    IReadOnlyList<SourceAnswer> Sources,
    Versions Versions) : IRefusable;
