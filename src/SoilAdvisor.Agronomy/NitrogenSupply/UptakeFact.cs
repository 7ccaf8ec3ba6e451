using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>One printed figure on when a crop takes nitrogen up.</summary>
/// <param name="Crop">Id of the crop; null for vegetables in general.</param>
/// <param name="Kind">What it says.</param>
/// <param name="Days">Days it speaks of; null for none.</param>
/// <param name="Low">Low end: percent, or lb/acre a day.</param>
/// <param name="High">High end; null for one number.</param>
/// <param name="Intercept">Where a line cuts, lb/acre; null for no line.</param>
/// <param name="Conditions">Where or when; null for none.</param>
/// <param name="Source">Where it stands.</param>
public sealed record UptakeFact(string? Crop, UptakeKind Kind, int? Days, decimal? Low, decimal? High, decimal? Intercept, string? Conditions, Citation Source);
