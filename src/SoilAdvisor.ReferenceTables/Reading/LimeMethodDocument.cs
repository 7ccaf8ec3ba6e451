namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>method.json.</summary>
internal sealed record LimeMethodDocument(
    string Id,
    string Kind,
    string Title,
    string Institution,
    IReadOnlyList<string> Region,
    string Reads,
    IReadOnlyList<string> Buffers,
    string? Formula,
    string Unit,
    string Basis,
    DepthDocument Depth,
    IReadOnlyList<decimal>? Targets,
    string? Soil,
    string? SaltScale,
    decimal? PhFrom,
    decimal? PhTo,
    decimal? BufferFrom,
    decimal? BufferTo,
    string? Rows,
    bool Interpolate,
    SourceReference Source,
    string Evidence,
    InForce InForce,
    string Transcribed,
    string TranscribedFrom,
    string? CheckedAgainstSource,
    string? Notes) : ITableHead
{
    public const string Equation = "equation";

    public const string TargetEquations = "target-equations";

    public const string Table = "table";

    public const string LaboratoryOnly = "laboratory-only";
}
