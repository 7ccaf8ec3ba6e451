using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.FieldWork;

/// <summary>One material measured out for one bed.</summary>
/// <param name="Bed">Id of the bed.</param>
/// <param name="PlantingIndex">Planting it is for, from 0; null for lime, which serves them all.</param>
/// <param name="Rate">Planned rate on the ground spread.</param>
/// <param name="Amount">As it is measured.</param>
/// <param name="Changes">What rounding changes in the supply of what it is spread for; empty for no change.</param>
/// <param name="HeldBy">What kept the amount from being rounded up; null where nothing did.</param>
public sealed record MeasuredSpread(string Bed, int? PlantingIndex, MassPerArea Rate, MeasuredAmount Amount, IReadOnlyList<SupplyChange> Changes, string? HeldBy);
