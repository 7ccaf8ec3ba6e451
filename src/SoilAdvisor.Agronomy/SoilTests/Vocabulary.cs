using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>The written ids of a closed set of trade words, both ways. Ids are permanent; a synonym may be read but is never written.</summary>
/// <typeparam name="T">The closed set.</typeparam>
public sealed class Vocabulary<T>
    where T : struct, Enum
{
    private readonly Dictionary<string, T> byText = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<T, string> byValue = [];

    internal Vocabulary(string word, (T Value, string Id, string[] Synonyms)[] entries)
    {
        Word = word;
        foreach (var (value, id, synonyms) in entries)
        {
            byValue.Add(value, id);
            byText.Add(id, value);
            foreach (var synonym in synonyms)
            {
                byText.Add(synonym, value);
            }
        }
    }

    /// <summary>What the set is called, for example "analyte".</summary>
    public string Word { get; }

    /// <summary>All ids in their order.</summary>
    public IReadOnlyCollection<string> Ids => byValue.Values;

    /// <summary>The id of a member.</summary>
    /// <param name="value">The member.</param>
    public string IdOf(T value) => byValue[value];

    /// <summary>Reads an id or synonym, in any case, with surrounding blanks ignored; refuses anything else with the nearest ids.</summary>
    /// <param name="text">What was received.</param>
    public Answer<T> Read(string text)
    {
        if (byText.TryGetValue(text.Trim(), out var value))
        {
            return Answer<T>.Given(value);
        }

        var near = NearestNames.Of(text.Trim(), byValue.Values);
        return Answer<T>.Refused(
            $"unknown-{Word.Replace(' ', '-').ToLowerInvariant()}",
            $"\"{(text.Length > 64 ? text[..64] + "…" : text)}\" is not a known {Word}.",
            near.Count > 0 ? $"Did you mean {string.Join(" or ", near)}? Known: {string.Join(", ", Ids)}." : $"Use one of: {string.Join(", ", Ids)}.");
    }
}
