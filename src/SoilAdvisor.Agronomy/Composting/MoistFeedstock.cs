using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Composting;

/// <summary>A feedstock of which only the water counts.</summary>
/// <param name="Wet">Mass as it is, above zero for the first.</param>
/// <param name="Moisture">Water, share of the mass as it is.</param>
public readonly record struct MoistFeedstock(Mass Wet, MassShare Moisture);
