using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>A nitrogen credit that a guide prints. May be negative. Per ton for manure.</summary>
/// <param name="Kind">previous-crop, cover-crop, manure or organic-matter.</param>
/// <param name="What">Id or group that earns it.</param>
/// <param name="PrintedLow">Low end as printed.</param>
/// <param name="PrintedHigh">High end as printed; null for one number.</param>
/// <param name="Unit">Unit as printed, for example lb/acre or lb/ton.</param>
/// <param name="Timing">When it becomes available; null where not printed.</param>
/// <param name="Condition">Printed condition; null for none.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Note">Remark; null for none.</param>
public sealed record CreditRow(string Kind, string What, decimal PrintedLow, decimal? PrintedHigh, string Unit, string? Timing, string? Condition, Citation Source, string? Note);
