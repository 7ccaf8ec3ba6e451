using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;

namespace SoilAdvisor.Agronomy.FieldWork;

/// <summary>What a strip should get of one material, to set a spreader or a hand by.</summary>
/// <param name="Material">The material.</param>
/// <param name="Rate">Rate wanted on the ground spread.</param>
/// <param name="Beds">Beds that get this rate.</param>
/// <param name="Target">Weight for the strip at that rate.</param>
/// <param name="PerPound">Rate that each pound caught on the strip means.</param>
public sealed record StripCalibration(Material Material, MassPerArea Rate, IReadOnlyList<string> Beds, Mass Target, MassPerArea PerPound);
