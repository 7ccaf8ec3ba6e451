using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Plans;

/// <summary>One material, how much of it, and when.</summary>
internal sealed record ApplicationAnswer(
    string Material, string Name, int Planting, string Crop, RateAnswer Rate, Quantity PerBed, VolumeAnswer? Volume, MoneyAnswer? Cost, string When, string? SpreadBy,
    string Purpose, IReadOnlyList<ShareAnswer> Analysis, CapAnswer? Cap, CitedAs By) : Sourced(By);
