using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api.Answers;

/// <summary>Collects the sources that one answer uses, so that exactly those are listed with it.</summary>
internal sealed class Bibliography(Tables tables)
{
    private readonly SortedDictionary<string, SortedSet<string>> used = new(StringComparer.Ordinal);

    /// <summary>Notes a use and writes it out.</summary>
    public CitedAs Cite(Citation citation)
    {
        var evidence = WordOf(citation.Evidence);
        if (!used.TryGetValue(citation.SourceId, out var evidences))
        {
            used.Add(citation.SourceId, evidences = new SortedSet<string>(StringComparer.Ordinal));
        }

        evidences.Add(evidence);
        return new CitedAs(citation.SourceId, citation.Locator, evidence);
    }

    /// <summary>Everything used so far, by id.</summary>
    public IReadOnlyList<SourceAnswer> List() => [.. used.Select(u => Of(tables.Sources[u.Key], [.. u.Value]))];

    public static SourceAnswer Of(Source source, IReadOnlyList<string> evidence) => new(
        source.Id, source.Authors, source.Title, source.Publisher, source.Edition, source.Year, source.Link, source.ArchivedLink, source.Note, evidence);

    public static string WordOf(Evidence evidence) => evidence switch
    {
        Evidence.Seen => "seen",
        Evidence.CommonPractice => "common-practice",
        Evidence.Ours => "ours",
        _ => "from-memory",
    };
}
