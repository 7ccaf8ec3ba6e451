using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.FieldWork;

/// <summary>One material measured out for one bed: weight, half buckets and quarter scoops, and what rounding changes.</summary>
internal sealed record MeasuredAnswer(string Bed, int? Planting, Quantity Planned, Quantity Measured, string How, decimal? Buckets, decimal? Scoops, decimal ChangePercent, IReadOnlyList<SupplyChangeAnswer> SupplyChanges, string? HeldBy, CitedAs By) : Sourced(By);
