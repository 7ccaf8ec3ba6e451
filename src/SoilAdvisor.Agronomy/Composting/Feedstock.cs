using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Composting;

/// <summary>What goes into a heap.</summary>
/// <param name="Wet">Mass as it is, above zero for the first.</param>
/// <param name="Carbon">Carbon, share of dry matter.</param>
/// <param name="Nitrogen">Nitrogen, share of dry matter; above zero for at least one.</param>
/// <param name="Moisture">Water, share of the mass as it is; below 1 for at least one.</param>
public readonly record struct Feedstock(Mass Wet, MassShare Carbon, MassShare Nitrogen, MassShare Moisture)
{
    internal double DryKilograms => Wet.Kilograms * (1 - Moisture.Fraction);
}
