using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Cations;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Ratings;

/// <summary>How a guide rates a soil test.</summary>
internal sealed record RatingsAnswer(
    GuideNamed Guide,
    string GuideReason,
    IReadOnlyList<string> OtherGuides,
    IReadOnlyList<SuspicionAnswer>? Suspicions,
    IReadOnlyList<RatingAnswer> Ratings,
    IReadOnlyList<IndexAnswer>? Indices,
    IReadOnlyList<CeilingAnswer>? Ceilings,
    NitrateTestAnswer? NitrateTest,
    IReadOnlyList<ConvertedRatingAnswer>? Converted,
    CationsAnswer? Cations,
    IReadOnlyList<GuideViewAnswer>? Beside,
    IReadOnlyList<GuideAgreementAnswer>? Agreement,
    IReadOnlyList<Fault>? Refused,
    IReadOnlyList<AssumptionAnswer> Assumptions,
    IReadOnlyList<SourceAnswer> Sources,
    Versions Versions) : IRefusable;
