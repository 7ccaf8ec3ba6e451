using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Climate;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>Cover crops for a free time, best first.</summary>
internal sealed record CoverCropsAnswer(
    GapAnswer Window,
    IReadOnlyList<string> Aims,
    IReadOnlyList<WeightAnswer> Weights,
    DegreeDaysAnswer? DegreeDays,
    TerminationAnswer? Termination,
    IReadOnlyList<CoverCropChoiceAnswer> Choices,
    IReadOnlyList<CoverCropExclusionAnswer> Excluded,
    IReadOnlyList<Fault>? Refused,
    IReadOnlyList<AssumptionAnswer> Assumptions,
    IReadOnlyList<SourceAnswer> Sources,
    Versions Versions,
    CitedAs By) : Sourced(By), IRefusable;
