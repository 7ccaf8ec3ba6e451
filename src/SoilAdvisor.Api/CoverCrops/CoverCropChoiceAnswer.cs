using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Catalogues;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>A cover crop that fits. It changes no need of the same plan.</summary>
internal sealed record CoverCropChoiceAnswer(
    string CoverCrop, string Name, decimal Score, IReadOnlyList<CoverCropReasonAnswer> Reasons, CoverCropDatesAnswer Dates, PublishedValue DaysNeeded, SeedAnswer? Seed,
    StatementAnswer? Biomass, StatementAnswer? Nitrogen, StatementAnswer? Phosphorus, CitedAs By) : Sourced(By);
