using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Climate;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>A cover crop that fits. It changes no need of the same plan.</summary>
internal sealed record CoverCropChoiceAnswer(
    string CoverCrop, string Name, decimal Score, IReadOnlyList<CoverCropReasonAnswer> Reasons, CoverCropDatesAnswer Dates, PlantBackAnswer Wait, PublishedValue DaysNeeded, PublishedValue? DaysToFlower,
    DegreeDaysAnswer? DegreeDays, SeedAnswer? Seed, StatementAnswer? Biomass, StatementAnswer? Nitrogen, StatementAnswer? Phosphorus, CoverCropNumbersAnswer Numbers, CitedAs By) : Sourced(By);
