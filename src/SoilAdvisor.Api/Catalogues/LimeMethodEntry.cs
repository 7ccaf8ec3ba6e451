using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>A published way to a lime requirement, with the soils, pH and buffer pH it is published for.</summary>
internal sealed record LimeMethodEntry(
    string Id, string Title, string Institution, IReadOnlyList<string> Regions, string Reads, string? Buffer, IReadOnlyList<string> Buffers, string Kind, string? Formula, string Unit, string Basis,
    Quantity Depth, IReadOnlyList<decimal> Targets, string Soil, string? SaltScale, decimal? PhFrom, decimal? PhTo, decimal? BufferFrom, decimal? BufferTo, string Rows, bool Interpolate,
    IReadOnlyList<PublishedValue> Parameters, IReadOnlyList<LimeEquationEntry> Equations, IReadOnlyList<LimeCellEntry> Cells, string? Notes, CitedAs By) : Sourced(By);
