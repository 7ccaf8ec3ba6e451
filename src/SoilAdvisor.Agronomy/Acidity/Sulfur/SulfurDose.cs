using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Acidity.Sulfur;

/// <summary>One spreading of elemental sulfur.</summary>
/// <param name="Rate">Elemental sulfur.</param>
/// <param name="PerBed">Mass for the bed; null without a bed.</param>
/// <param name="MonthsAfterFirst">Months after the first dose, at least, and only after a new soil test.</param>
/// <param name="Date">Earliest day; null when the first day is not known.</param>
public sealed record SulfurDose(Rate<ElementalSulfur> Rate, Mass? PerBed, int MonthsAfterFirst, DateOnly? Date);
