using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>With what share the nitrogen of a material is counted.</summary>
/// <param name="Material">Id of the material.</param>
/// <param name="Name">Its trade name.</param>
/// <param name="Used">The share used, in words.</param>
/// <param name="Beside">What others print, or our class by its carbon to nitrogen ratio, each with its source.</param>
public sealed record NitrogenFactor(string Material, string Name, Cited<string> Used, IReadOnlyList<Cited<string>> Beside);
