using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Catalogues;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>How much seed.</summary>
internal sealed record SeedAnswer(Quantity? PerBed, PublishedValue Rate, CitedAs By) : Sourced(By);
