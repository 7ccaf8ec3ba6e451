using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Climate;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>Cover crops that fit a gap, best first, and those that do not.</summary>
internal sealed record CoverCropSelectionAnswer(
    GapAnswer Gap, IReadOnlyList<string> Aims, IReadOnlyList<WeightAnswer> Weights, DegreeDaysAnswer? DegreeDays, TerminationAnswer? Termination,
    IReadOnlyList<CoverCropChoiceAnswer> Choices, IReadOnlyList<CoverCropExclusionAnswer> Excluded, CitedAs By) : Sourced(By);
