using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>One spreading of lime.</summary>
/// <param name="Rate">The stone as spread.</param>
/// <param name="PerBed">Mass for the bed; null without a bed.</param>
/// <param name="MonthsFrom">Months after the first dose, at least; null where no wait is printed.</param>
/// <param name="MonthsTo">Months after the first dose, at most; null where no wait is printed.</param>
/// <param name="Date">Earliest day; null when the first day is not known or no wait is printed.</param>
public sealed record LimeDose(MassPerArea Rate, Mass? PerBed, int? MonthsFrom, int? MonthsTo, DateOnly? Date);
