using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.CoverCrops;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.SeedRates;

/// <summary>Seed of one cover crop or of a mixture, weighed out.</summary>
internal sealed record SeedRateAnswer(
    string Sowing,
    IReadOnlyList<SownSpeciesAnswer> Species,
    decimal? TotalSharePercent,
    Quantity SeedRate,
    Quantity? PerBed,
    Quantity? PerBedOunces,
    Quantity? PerBedGrams,
    MoneyAnswer? Cost,
    IReadOnlyList<InoculantAnswer> Inoculants,
    IReadOnlyList<StatementAnswer> Warnings,
    IReadOnlyList<WorkingLineAnswer>? Working,
    IReadOnlyList<Fault>? Refused,
    IReadOnlyList<AssumptionAnswer> Assumptions,
    IReadOnlyList<SourceAnswer> Sources,
    Versions Versions,
    CitedAs By) : Sourced(By), IRefusable;
