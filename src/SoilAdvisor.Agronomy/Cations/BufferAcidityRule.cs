using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>How much acidity a unit of one buffer's pH stands for, as published for that buffer and no other.</summary>
/// <param name="Buffer">The buffer.</param>
/// <param name="PerUnit">Acidity for one unit of buffer pH, in the basis of the buffer.</param>
/// <param name="Start">Buffer pH at which it counts none.</param>
/// <param name="Unit">meq/100g or meq/100cm3.</param>
/// <param name="Source">Where it stands.</param>
public sealed record BufferAcidityRule(Procedure Buffer, decimal PerUnit, decimal Start, string Unit, Citation Source);
