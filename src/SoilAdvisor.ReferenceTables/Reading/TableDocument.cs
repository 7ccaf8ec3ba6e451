namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>The document beside a CSV table.</summary>
internal sealed record TableDocument(
    string Id,
    string Kind,
    string Title,
    IReadOnlyList<string> Keys,
    OrderedDictionary<string, ColumnSpecification> Columns,
    SourceReference Source,
    string Evidence,
    InForce InForce,
    string Transcribed,
    string TranscribedFrom,
    string? CheckedAgainstSource,
    string? Notes) : ITableHead;
