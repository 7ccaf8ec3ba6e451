using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>Cover crops that fit a gap, best first, and those that do not.</summary>
internal sealed record CoverCropSelectionAnswer(GapAnswer Gap, IReadOnlyList<CoverCropChoiceAnswer> Choices, IReadOnlyList<CoverCropExclusionAnswer> Excluded, CitedAs By) : Sourced(By);
