using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>What limits a dressing for structure beside the largest single rate of its material.</summary>
/// <param name="MostPhosphate">Total phosphate that is left for it; null where nothing limits it.</param>
/// <param name="Reason">Why, in words; null without a limit.</param>
/// <param name="AtStop">True at or above the guide's stop limit: none at all.</param>
/// <param name="Cap">The tightest cap of the material, less what was spread of it; null for none.</param>
public sealed record StructureLimits(MassPerArea? MostPhosphate, string? Reason, bool AtStop, RateCap? Cap);
