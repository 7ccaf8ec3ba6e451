using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Sampling;

/// <summary>The parts that were asked for; a part that was not is left out.</summary>
internal sealed record SamplingAnswer(
    CoreCountAnswer? Cores,
    CorePrecisionAnswer? Precision,
    IReadOnlyList<TestChangeAnswer>? Changes,
    IReadOnlyList<PooledAnswer>? Pooled,
    CompositesAnswer? Composites,
    IReadOnlyList<WorkingLineAnswer>? Working,
    IReadOnlyList<Fault>? Refused,
    IReadOnlyList<AssumptionAnswer> Assumptions,
    IReadOnlyList<SourceAnswer> Sources,
    Versions Versions) : IRefusable;
