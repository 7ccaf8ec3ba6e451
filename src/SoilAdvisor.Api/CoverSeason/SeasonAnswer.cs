using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.CoverSeason;

/// <summary>Which cover crop to grow when on every bed.</summary>
internal sealed record SeasonAnswer(
    string? Farm,
    string Date,
    CoverSeasonAnswer CoverSeason,
    IReadOnlyList<Fault>? Refused,
    IReadOnlyList<AssumptionAnswer> Assumptions,
    IReadOnlyList<SourceAnswer> Sources,
    Versions Versions) : IRefusable;
