using SoilAdvisor.Reports.Rulers;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Paper;

/// <summary>The tables of ratings in words, for a page that draws nothing.</summary>
internal static class RatingRows
{
    /// <summary>The columns beside that of the sources.</summary>
    public static IReadOnlyList<string> Columns { get; } = ["Tested", "Result", "Class, and how sure", "On the guide's scale"];

    public static SourcedTable Of(RatingTable table) => new(
        Columns,
        [.. table.Lines.Select(l => new SourcedRow([TradeWords.Of(l.Rating.Analyte), Result(l), RatingWords.Verdict(l), RulerWords.Scale(l.Rating)], l.Sources))]);

    public static SourcedTable Of(ComparisonTable table) => new(
        ["Tested", "Soil test", .. Columns.Skip(1)],
        [
            .. table.Scales.SelectMany(lines => lines).Select(l => new SourcedRow(
                [TradeWords.Of(l.Rating.Analyte), l.Sample ?? "", Result(l), RatingWords.Verdict(l), RulerWords.Scale(l.Rating)], l.Sources)),
        ]);

    /// <summary>The result in the guide's unit, and where the true value likely lies.</summary>
    public static Cell Result(RatedLine line) => line.Whisker is { } whisker
        ? Cell.Of(RulerWords.Result(line.Rating), $"likely {Figure.Calculator(whisker.Low, 3)} to {Figure.Calculator(whisker.High, 3)}")
        : RulerWords.Result(line.Rating);
}
