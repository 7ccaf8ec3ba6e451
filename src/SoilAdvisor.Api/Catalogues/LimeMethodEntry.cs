using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>A way from a named buffer's pH to a lime requirement.</summary>
internal sealed record LimeMethodEntry(
    string Id, string Title, string Institution, IReadOnlyList<string> Regions, string Buffer, string Kind, string? Formula, string Unit, string Basis,
    Quantity Depth, IReadOnlyList<decimal> Targets, decimal? BufferFrom, decimal? BufferTo, bool Interpolate,
    IReadOnlyList<PublishedValue> Parameters, IReadOnlyList<LimeCellEntry> Cells, string? Notes, CitedAs By) : Sourced(By);
