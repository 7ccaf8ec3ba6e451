using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Ratings;

/// <summary>
/// What a pre-sidedress nitrate test asks for. Level is the printed span that the test lies in; the rate is nitrogen. It sets the sidedressing only
/// and stands in place of the credits of the book, which would count the same nitrogen twice.
/// </summary>
internal sealed record NitrateTestAnswer(
    string Crop,
    bool Manured,
    ReadingAnswer Value,
    string Level,
    string Action,
    RateAnswer Rate,
    string Replaces,
    string? How,
    IReadOnlyList<AssumptionAnswer> Assumptions,
    IReadOnlyList<WorkingLineAnswer>? Working,
    CitedAs By) : Sourced(By);
