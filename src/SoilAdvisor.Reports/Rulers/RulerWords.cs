using System.Globalization;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Rulers;

/// <summary>The same ruler in words, for plain text and for a reader who does not see the drawing.</summary>
internal static class RulerWords
{
    /// <summary>How to read the rulers of a page; said once.</summary>
    public static IReadOnlyList<string> HowToRead { get; } =
    [
        "Each ruler is drawn in the guide's own unit. Its long marks are the limits that the guide prints, where they truly stand; the second line under the edge shows where the guide wants the soil.",
        "The dot is your result. The line through the dot spans where the true value of the ground likely lies: four times in five it lies within.",
        "An open ring with a dashed line is a result reported as \"less than\" or \"more than\": it may lie anywhere on the dashes.",
        "Where the largest number is more than twelve times the lowest limit the ruler is by tens: each step multiplies.",
    ];

    public static string Result(Rating rating) => WithUnit(rating.Amount.ToString(), rating);

    public static string Place(Rating rating) =>
        $"{rating.Class.Name}, {ClassLimits.Of(rating.Scale, rating.ClassIndex, rating.Cec)}";

    public static string Scale(Rating rating) =>
        string.Join(" · ", rating.Scale.Classes.Select((c, i) => $"{c.Name}: {ClassLimits.Of(rating.Scale, i, rating.Cec)}"));

    /// <summary>The classes by the numbers that stand on a ruler too narrow for their names.</summary>
    public static string Key(Rating rating) =>
        string.Join(" · ", rating.Scale.Classes.Select((c, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1} {c.Name}")));

    public static string Spoken(RatedLine line) => string.Join(" ", new[]
    {
        $"{(line.Sample is { } sample ? $"{sample}: " : "")}{TradeWords.Of(line.Rating.Analyte)} {Result(line.Rating)} on a ruler with the guide's limits: {Place(line.Rating)}.",
        line.HowSure is { } sure ? $"How sure: {sure}." : null,
        line.Whisker is { } whisker ? $"The true value likely lies between {Figure.Calculator(whisker.Low, 3)} and {WithUnit(Figure.Calculator(whisker.High, 3), line.Rating)}." : null,
        line.Sample is null ? $"All classes: {Scale(line.Rating)}." : null,
    }.OfType<string>());

    public static string SpokenScale(Rating rating) => $"Ruler of {TradeWords.Of(rating.Analyte)}{(TradeWords.Of(rating.Scale.Unit) is { Length: > 0 } unit ? $" in {unit}" : "")}. All classes: {Scale(rating)}.";

    private static string WithUnit(string number, Rating rating) => $"{number} {TradeWords.Of(rating.Scale.Unit)}".TrimEnd();
}
