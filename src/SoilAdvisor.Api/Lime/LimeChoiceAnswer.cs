using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Plans;

namespace SoilAdvisor.Api.Lime;

/// <summary>One stone that meets the requirement, with its doses.</summary>
internal sealed record LimeChoiceAnswer(
    string Material, string Name, RateAnswer Rate, Quantity? PerBed, IReadOnlyList<Quantity> Doses, VolumeAnswer? Volume, MoneyAnswer? Cost,
    IReadOnlyList<string> Reasons, IReadOnlyList<ShareAnswer> Analysis, CitedAs By) : Sourced(By);
