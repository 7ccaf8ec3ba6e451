using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Lime;

/// <summary>A lime requirement and the stones that meet it; or, above the target, how to lower the pH.</summary>
internal sealed record LimeAnswer(
    RequirementAnswer Requirement,
    IReadOnlyList<ComparedMethodAnswer>? Comparison,
    LimeStatementAnswer? Spread,
    IReadOnlyList<LimeChoiceAnswer> Choices,
    IReadOnlyList<LimeExclusionAnswer> Excluded,
    SulfurAnswer? Sulfur,
    TimingAnswer? Timing,
    IReadOnlyList<LimeStatementAnswer> Cautions,
    IReadOnlyList<string> Warnings,
    IReadOnlyList<WorkingLineAnswer>? Working,
    IReadOnlyList<Fault>? Refused,
    IReadOnlyList<AssumptionAnswer> Assumptions,
    IReadOnlyList<SourceAnswer> Sources,
    Versions Versions) : IRefusable;
