using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Plans;

namespace SoilAdvisor.Api.Lime;

/// <summary>One stone that meets the requirement, with its doses.</summary>
internal sealed record LimeChoiceAnswer(
    string Material, string Name, string OrganicStatus, RateAnswer Rate, decimal CoversPercent, Quantity? PerBed, IReadOnlyList<DoseAnswer> Doses, DoseLimitAnswer DoseLimit,
    decimal NeutralisingValue, EffectiveValueAnswer? EffectiveValue, VolumeAnswer? Volume, MoneyAnswer? Cost, MoneyAnswer? CostPerTonOfLime,
    IReadOnlyList<string> Reasons, IReadOnlyList<SuppliedAnswer> Supplied, IReadOnlyList<string> Cautions, IReadOnlyList<ShareAnswer> Analysis, CitedAs By) : Sourced(By);
