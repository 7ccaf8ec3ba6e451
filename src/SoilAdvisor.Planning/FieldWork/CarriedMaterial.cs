using SoilAdvisor.Agronomy.FieldWork;
using SoilAdvisor.Agronomy.Materials;

namespace SoilAdvisor.Planning.FieldWork;

/// <summary>One material for one bed at one time, measured out.</summary>
/// <param name="Offered">The material.</param>
/// <param name="By">Last day; null where none is known.</param>
/// <param name="Dose">Which dose of lime, from 0; null elsewhere.</param>
/// <param name="DoseWords">The same in words; null where there is only one dose, and elsewhere.</param>
/// <param name="Spread">How much.</param>
internal sealed record CarriedMaterial(OfferedMaterial Offered, DateOnly? By, int? Dose, string? DoseWords, MeasuredSpread Spread);
