using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>One coefficient of a published rule.</summary>
/// <param name="Symbol">Kebab-case symbol.</param>
/// <param name="Meaning">What it is.</param>
/// <param name="Value">Its value.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Source">Where it stands.</param>
public sealed record RateParameter(string Symbol, string Meaning, decimal Value, string Unit, Citation Source);
