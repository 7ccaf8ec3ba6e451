using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.ReferenceTables.Kinds;

/// <summary>The words of the evidence column.</summary>
internal static class EvidenceWords
{
    private static readonly IReadOnlyDictionary<string, Evidence> ByWord = new Dictionary<string, Evidence>(StringComparer.Ordinal)
    {
        ["seen"] = Evidence.Seen,
        ["from-memory"] = Evidence.FromMemory,
        ["common-practice"] = Evidence.CommonPractice,
        ["ours"] = Evidence.Ours,
    };

    public static IReadOnlyCollection<string> All { get; } = [.. ByWord.Keys];

    public static Evidence Read(string word) => ByWord[word];
}
