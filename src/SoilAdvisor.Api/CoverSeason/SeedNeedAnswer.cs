using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.CoverSeason;

/// <summary>Seed of one species over all beds.</summary>
internal sealed record SeedNeedAnswer(
    string CoverCrop, string Name, int Beds, Quantity? Needed, Quantity OnHand, Quantity? ToBuy, int? Packs, Quantity? Pack, MoneyAnswer? Cost, CitedAs By) : Sourced(By);
