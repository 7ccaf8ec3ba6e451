using UnitsNet;

namespace SoilAdvisor.Agronomy.FieldWork;

/// <summary>What one bed gets of a mix.</summary>
/// <param name="Bed">Id of the bed.</param>
/// <param name="Weight">Weight of the mix.</param>
public sealed record MixPortion(string Bed, Mass Weight);
