namespace SoilAdvisor.Api.Lime;

/// <summary>The lime of a bed.</summary>
internal sealed record LimePlanAnswer(RequirementAnswer Requirement, IReadOnlyList<LimeChoiceAnswer> Choices, string? Chosen, TimingAnswer? Timing, SulfurAnswer? Sulfur);
