using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>The equation that a lime method prints for one target pH, in the method's unit.</summary>
internal sealed record LimeEquationEntry(decimal TargetPh, decimal Constant, decimal PerBuffer, decimal PerBufferSquare, decimal PerPh, CitedAs By) : Sourced(By);
