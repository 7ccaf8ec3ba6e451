using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>Permission to read a rate table with a guide's class limits, and how its classes are named there.</summary>
/// <param name="Guide">Id of the guide.</param>
/// <param name="Classes">Rate table's class by the guide's class name; empty for a build-up rule.</param>
/// <param name="Source">Who says that the two belong together.</param>
/// <param name="Note">Remark; null for none.</param>
public sealed record RatePair(string Guide, IReadOnlyDictionary<string, string> Classes, Citation Source, string? Note);
