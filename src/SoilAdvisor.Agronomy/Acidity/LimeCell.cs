using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>One printed cell of a lime table.</summary>
/// <param name="BufferPh">Buffer pH as printed.</param>
/// <param name="TargetPh">Target pH as printed.</param>
/// <param name="Rate">Rate in the method's unit.</param>
/// <param name="Source">Where it stands.</param>
public sealed record LimeCell(decimal BufferPh, decimal TargetPh, decimal Rate, Citation Source);
