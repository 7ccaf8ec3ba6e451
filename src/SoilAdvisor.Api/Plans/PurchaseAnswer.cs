using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Plans;

/// <summary>What the whole farm needs of one material; bought in whole packs where it is sold so.</summary>
internal sealed record PurchaseAnswer(
    string Material, string Name, Quantity Needed, Quantity? OnHand, Quantity ToBuy, int? Packs, Quantity? Pack, MoneyAnswer? Cost, MoneyAnswer? Freight, CitedAs By) : Sourced(By);
