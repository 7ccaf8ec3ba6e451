namespace SoilAdvisor.Api.CoverCrops;

/// <summary>What it does in numbers, if grown and killed then. Phosphate and potash are moved, not added.</summary>
internal sealed record CoverCropNumbersAnswer(
    RangeAnswer? DryMatter, RangeAnswer? NitrogenFixed, IReadOnlyList<StageNitrogenAnswer> NitrogenByStage, RangeAnswer? PhosphateMoved, RangeAnswer? PotashMoved, string? PhosphorusEvidence, IReadOnlyList<TrialAnswer> Trials);
