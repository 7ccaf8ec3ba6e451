using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Plans;

/// <summary>How the materials of the farm were chosen, and what is to pay. The gap is proven: no plan within the limits is better by more.</summary>
internal sealed record ChoiceAnswer(
    int DifferentNeeds, int Products, int Passes, decimal GapPercent, string Ended, MoneyAnswer? Bought, MoneyAnswer? Freight, MoneyAnswer? Labour, MoneyAnswer? ToPay, CitedAs By) : Sourced(By);
