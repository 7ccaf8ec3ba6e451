using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Ratings;

/// <summary>A reading carried to another method by a line that the request named. It is an estimate and stands beside the measured reading, never in its place.</summary>
internal sealed record ConvertedRatingAnswer(
    string Conversion,
    bool Estimate,
    ReadingAnswer Original,
    string Guide,
    string GuideReason,
    RatingAnswer Rating,
    IReadOnlyList<AssumptionAnswer> Assumptions,
    CitedAs By) : Sourced(By);
