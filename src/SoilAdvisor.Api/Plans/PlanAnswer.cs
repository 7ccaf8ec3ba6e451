using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Checks;
using SoilAdvisor.Api.FieldWork;
using SoilAdvisor.Api.CoverSeason;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Plans;

/// <summary>The plan of a farm.</summary>
internal sealed record PlanAnswer(
    string? Farm,
    string Date,
    GuideNamed Guide,
    string GuideReason,
    IReadOnlyList<string> OtherGuides,
    string? RateTable,
    string Objective,
    IReadOnlyList<SuspicionAnswer>? Suspicions,
    IReadOnlyList<BedAnswer> Beds,
    IReadOnlyList<PurchaseAnswer> Purchases,
    IReadOnlyList<FindingAnswer> Findings,
    IReadOnlyList<string> Warnings,
    TotalsAnswer Totals,
    ChoiceAnswer Choice,
    FieldWorkAnswer? FieldWork,
    IReadOnlyList<MaterialPriceAnswer>? MaterialPrices,
    IReadOnlyList<MaterialTestAnswer>? MaterialTests,
    CoverSeasonAnswer? CoverSeason,
    IReadOnlyList<Fault>? Refused,
    IReadOnlyList<AssumptionAnswer> Assumptions,
    IReadOnlyList<SourceAnswer> Sources,
    Versions Versions) : IRefusable;
