using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Wording;

/// <summary>How sources are explained.</summary>
internal static class SourceWords
{
    public const string Explanation =
        "A number in brackets leads to its source here. A star marks a value given from memory: it was not read again for this report.";

    public static string Place(Citation place)
    {
        var evidence = TradeWords.Of(place.Evidence);
        return place.Locator is { } locator ? $"{locator}. {char.ToUpperInvariant(evidence[0])}{evidence[1..]}." : $"{char.ToUpperInvariant(evidence[0])}{evidence[1..]}.";
    }
}
