using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>The equation that a method prints for one target pH: rate = constant + per buffer × B + per square × B² + per pH × pH.</summary>
/// <param name="TargetPh">Target pH it is printed for.</param>
/// <param name="Constant">Constant, in the method's unit.</param>
/// <param name="PerBuffer">For one unit of buffer pH.</param>
/// <param name="PerBufferSquare">For one squared unit of buffer pH.</param>
/// <param name="PerPh">For one unit of soil pH.</param>
/// <param name="Source">Where it stands.</param>
public sealed record LimeTargetEquation(decimal TargetPh, decimal Constant, decimal PerBuffer, decimal PerBufferSquare, decimal PerPh, Citation Source);
