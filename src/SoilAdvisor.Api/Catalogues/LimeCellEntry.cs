using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>One printed cell of a lime table, in the method's unit: entered by buffer pH, exchangeable acidity (meq/100 g) or soil pH.</summary>
internal sealed record LimeCellEntry(decimal? BufferPh, decimal? Acidity, decimal? SoilPh, IReadOnlyList<string> SoilGroups, decimal? TargetPh, decimal Rate, CitedAs By) : Sourced(By);
