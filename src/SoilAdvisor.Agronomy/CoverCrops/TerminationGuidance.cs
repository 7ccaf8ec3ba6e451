using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>Federal guidance on the day a cover crop must be ended, for cropland that is not irrigated and whose next crop is insured.</summary>
/// <param name="Zone">Zone 1 to 4; null when not said.</param>
/// <param name="EndBy">Latest day by the guidance; null when the zone or the planting day is not known.</param>
/// <param name="Text">What it asks, worded for a reader who checks it with the agency.</param>
/// <param name="Source">Where it stands.</param>
public sealed record TerminationGuidance(int? Zone, DateOnly? EndBy, string Text, Citation Source);
