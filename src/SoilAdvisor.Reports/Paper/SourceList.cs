using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Paper;

/// <summary>
/// The sources of a report, numbered: publications in the order in which they are first used, their places together, so that one reader
/// finds a number by counting and another finds a publication once.
/// </summary>
internal sealed class SourceList
{
    private readonly Dictionary<Citation, int> numbers = [];

    public SourceList(IEnumerable<Citation> citations, IReadOnlyDictionary<string, Source> bibliography)
    {
        var used = new List<UsedSource>();
        foreach (var bySource in citations.Distinct().GroupBy(c => c.SourceId))
        {
            var places = new List<(int Number, Citation Place)>();
            foreach (var place in bySource)
            {
                numbers.Add(place, numbers.Count + 1);
                places.Add((numbers.Count, place));
            }

            used.Add(new UsedSource(bySource.Key, bibliography.GetValueOrDefault(bySource.Key), places));
        }

        Used = used;
    }

    /// <summary>The publications in order.</summary>
    public IReadOnlyList<UsedSource> Used { get; }

    /// <summary>The number that stands in brackets.</summary>
    public int NumberOf(Citation citation) => numbers[citation];

    /// <summary>A mark as printed, for example "[3]"; a star says from memory.</summary>
    public string Mark(Citation citation) => Mark(NumberOf(citation), citation);

    /// <summary>A mark as printed.</summary>
    public static string Mark(int number, Citation citation) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"[{number}{(citation.Evidence == Evidence.FromMemory ? "*" : "")}]");
}
