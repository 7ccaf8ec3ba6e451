using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>What a harvest takes away for one unit of yield; phosphorus and potassium as oxides, a missing figure is not known.</summary>
internal sealed record RemovalEntry(
    string Part, string Basis, string Unit, decimal? N, decimal? P2O5, decimal? K2O, decimal? Ca, decimal? Mg, decimal? S, string? Note, CitedAs By) : Sourced(By);
