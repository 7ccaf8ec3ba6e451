namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>guide.json.</summary>
internal sealed record GuideDocument(
    string Id,
    string Title,
    string Institution,
    IReadOnlyList<string> Region,
    string Crops,
    string CalibratedOn,
    SourceReference Source,
    string Evidence,
    InForce InForce,
    string Transcribed,
    string TranscribedFrom,
    string? CheckedAgainstSource,
    string? Notes) : ITableHead;
