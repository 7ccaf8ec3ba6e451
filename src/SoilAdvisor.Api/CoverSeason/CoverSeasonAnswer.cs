using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.CoverCrops;

namespace SoilAdvisor.Api.CoverSeason;

/// <summary>A season of cover crops for the whole farm. Points are the sum over the beds; taken is what the number of species cost.</summary>
internal sealed record CoverSeasonAnswer(
    IReadOnlyList<SeasonStandAnswer> Stands, IReadOnlyList<SeedNeedAnswer> Seed, decimal Points, decimal Taken, bool Best, string Ended, MoneyAnswer? Cost,
    IReadOnlyList<WeightAnswer> Weights, CitedAs By) : Sourced(By);
