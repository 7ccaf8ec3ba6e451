using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Rulers;

/// <summary>The same ruler in words, for plain text and for a reader who does not see the drawing.</summary>
internal static class RulerWords
{
    public static string Result(Rating rating) => WithUnit(rating.Amount.ToString(), rating);

    public static string Place(Rating rating) =>
        $"{rating.Class.Name}, {ClassLimits.Of(rating.Scale, rating.ClassIndex, rating.Cec)}";

    public static string Scale(Rating rating) =>
        string.Join(" · ", rating.Scale.Classes.Select((c, i) => $"{c.Name}: {ClassLimits.Of(rating.Scale, i, rating.Cec)}"));

    public static string Spoken(Rating rating) =>
        $"{TradeWords.Of(rating.Analyte)} {Result(rating)} on a ruler with the guide's limits: {Place(rating)}. All classes: {Scale(rating)}.";

    private static string WithUnit(string number, Rating rating) => $"{number} {TradeWords.Of(rating.Scale.Unit)}".TrimEnd();
}
