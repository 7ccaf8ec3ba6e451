using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity.Sulfur;

/// <summary>One cell of the sulfur table.</summary>
/// <param name="Soil">Column of the table.</param>
/// <param name="StartPh">Soil pH at the start, as printed.</param>
/// <param name="GoalPh">pH that the rate reaches.</param>
/// <param name="Rate">Elemental sulfur, lb/acre, as printed.</param>
/// <param name="Source">Where it stands.</param>
public sealed record SulfurCell(SulfurSoil Soil, decimal StartPh, decimal GoalPh, decimal Rate, Citation Source);
