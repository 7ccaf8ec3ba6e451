using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Plans;

/// <summary>What the guide advises for one nutrient.</summary>
internal sealed record NeedAnswer(
    string Nutrient, int Planting, string Crop, QuantityRange Rate, string? Class, string? Standing, string RateTable, string? Guide, Quantity? Removal,
    IReadOnlyList<SplitAnswer> Splits, string? Condition, IReadOnlyList<string> Alternatives, CitedAs By) : Sourced(By);
