using SoilAdvisor.Agronomy.Materials;
using UnitsNet;

namespace SoilAdvisor.Agronomy.FieldWork;

/// <summary>One material of a mix.</summary>
/// <param name="Material">The material.</param>
/// <param name="Weight">Weight for the whole batch.</param>
public sealed record MixPart(Material Material, Mass Weight);
