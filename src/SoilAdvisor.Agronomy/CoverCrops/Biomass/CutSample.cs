using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops.Biomass;

/// <summary>What was cut at the soil surface from one frame, or from several of which the area was added up.</summary>
/// <param name="Frame">Area that was cut; above zero.</param>
/// <param name="Weighed">Weight of the cut; not below zero.</param>
/// <param name="DryMatter">Dry matter in the fresh weight; null when the dry cut was weighed.</param>
public sealed record CutSample(Area Frame, Mass Weighed, MassShare? DryMatter);
