using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>Federal termination guidance of a zone for cropland that is not irrigated and whose next crop is insured.</summary>
/// <param name="Zone">1 to 4.</param>
/// <param name="DaysFromPlanting">Days from planting to the latest end: below zero before planting.</param>
/// <param name="Text">The guidance in words.</param>
/// <param name="Source">Where it stands.</param>
public sealed record TerminationZone(int Zone, int DaysFromPlanting, string Text, Citation Source);
