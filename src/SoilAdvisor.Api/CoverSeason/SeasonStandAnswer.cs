using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.CoverCrops;

namespace SoilAdvisor.Api.CoverSeason;

/// <summary>What one bed grows in one gap. Without coverCrop it stays bare, and said tells why.</summary>
internal sealed record SeasonStandAnswer(
    string Bed, GapAnswer Gap, string? CoverCrop, string? Name, decimal Points, IReadOnlyList<CoverCropReasonAnswer>? Reasons, IReadOnlyList<SeasonTaskAnswer> Tasks,
    Quantity? Seed, string? Said, IReadOnlyList<SeasonChoiceAnswer> Best, CitedAs By) : Sourced(By);
