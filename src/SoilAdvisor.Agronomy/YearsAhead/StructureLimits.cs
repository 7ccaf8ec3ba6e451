using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>How much phosphate a dressing for structure may lay down.</summary>
/// <param name="MostPhosphate">Total phosphate that is left for it; null where nothing limits it.</param>
/// <param name="Reason">Why, in words that can follow "because"; null without a limit.</param>
/// <param name="AtStop">True at or above the guide's stop limit: none at all.</param>
public sealed record StructureLimits(MassPerArea? MostPhosphate, string? Reason, bool AtStop);
