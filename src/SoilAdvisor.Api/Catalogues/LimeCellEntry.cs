using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>One printed cell of a lime table, in the method's unit.</summary>
internal sealed record LimeCellEntry(decimal BufferPh, decimal TargetPh, decimal Rate, CitedAs By) : Sourced(By);
