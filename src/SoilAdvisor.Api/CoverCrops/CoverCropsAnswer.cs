using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>Cover crops for a free time, best first.</summary>
internal sealed record CoverCropsAnswer(
    GapAnswer Window,
    IReadOnlyList<CoverCropChoiceAnswer> Choices,
    IReadOnlyList<CoverCropExclusionAnswer> Excluded,
    IReadOnlyList<Fault>? Refused,
    IReadOnlyList<AssumptionAnswer> Assumptions,
    IReadOnlyList<SourceAnswer> Sources,
    Versions Versions,
    CitedAs By) : Sourced(By), IRefusable;
