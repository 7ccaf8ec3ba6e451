using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Plans;

/// <summary>What the whole farm needs of one material.</summary>
internal sealed record PurchaseAnswer(string Material, string Name, Quantity Needed, Quantity? OnHand, Quantity ToBuy, MoneyAnswer? Cost, CitedAs By) : Sourced(By);
