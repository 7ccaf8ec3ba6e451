using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Ratings;

/// <summary>One reading on the guide's scale. The class is the guide's word; the standing is ours.</summary>
internal sealed record RatingAnswer(
    string Analyte,
    ReadingAnswer Value,
    string Class,
    string Standing,
    string? HowSure,
    IReadOnlyList<ClassProbabilityAnswer>? ClassProbabilities,
    LikelyAnswer? Likely,
    ScaleAnswer Scale,
    IReadOnlyList<AssumptionAnswer>? Assumptions,
    IReadOnlyList<WorkingLineAnswer>? Working,
    CitedAs By) : Sourced(By);
