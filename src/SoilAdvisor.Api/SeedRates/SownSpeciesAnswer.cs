using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Catalogues;

namespace SoilAdvisor.Api.SeedRates;

/// <summary>What to weigh out of one species. The source is that of its rate.</summary>
internal sealed record SownSpeciesAnswer(
    string CoverCrop, string Name, decimal? SharePercent, QuantityRange? FullRate, Quantity PureLiveRate, decimal PureLivePercent, Quantity SeedRate, Quantity? SeedsPerSquareFoot,
    Quantity? PerBed, Quantity? PerBedOunces, Quantity? PerBedGrams, MoneyAnswer? Cost, PublishedValue? Inoculant, PublishedValue? Depth, CitedAs By) : Sourced(By);
