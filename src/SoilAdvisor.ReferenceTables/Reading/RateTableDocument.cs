namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>rate-table.json.</summary>
internal sealed record RateTableDocument(
    string Id,
    string Kind,
    string Title,
    string Institution,
    IReadOnlyList<string> Region,
    string AreaBasis,
    IReadOnlyList<RatePairDocument> ReadWith,
    SourceReference Source,
    string Evidence,
    InForce InForce,
    string Transcribed,
    string TranscribedFrom,
    string? CheckedAgainstSource,
    string? Notes) : ITableHead
{
    public const string ClassTable = "class-table";

    public const string BuildUpAndMaintenance = "build-up-and-maintenance";
}
