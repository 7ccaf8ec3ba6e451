using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Checks;

/// <summary>The findings. A missing record never passes.</summary>
internal sealed record CheckAnswer(
    string Standard,
    IReadOnlyList<FindingAnswer> Findings,
    IReadOnlyList<WorkingLineAnswer>? Working,
    IReadOnlyList<Fault>? Refused,
    IReadOnlyList<AssumptionAnswer> Assumptions,
    IReadOnlyList<SourceAnswer> Sources,
    Versions Versions) : IRefusable;
