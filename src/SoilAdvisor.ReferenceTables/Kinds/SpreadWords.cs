using SoilAdvisor.Agronomy.Certainty;

namespace SoilAdvisor.ReferenceTables.Kinds;

/// <summary>The words of the table of variability.</summary>
internal static class SpreadWords
{
    private static readonly IReadOnlyDictionary<string, SpreadKind> KindByWord = new Dictionary<string, SpreadKind>(StringComparer.Ordinal)
    {
        ["sampling-and-analysis"] = SpreadKind.SamplingAndAnalysis,
        ["laboratory-repeat"] = SpreadKind.LaboratoryRepeat,
        ["between-laboratories"] = SpreadKind.BetweenLaboratories,
        ["field"] = SpreadKind.Field,
        ["season"] = SpreadKind.Season,
    };

    private static readonly IReadOnlyDictionary<string, SpreadUse> UseByWord = new Dictionary<string, SpreadUse>(StringComparer.Ordinal)
    {
        ["composite"] = SpreadUse.Composite,
        ["laboratory"] = SpreadUse.Laboratory,
        ["cores"] = SpreadUse.Cores,
        ["two-laboratories"] = SpreadUse.TwoLaboratories,
        ["two-seasons"] = SpreadUse.TwoSeasons,
        ["information"] = SpreadUse.Information,
    };

    private static readonly IReadOnlyDictionary<string, SpreadMeasure> MeasureByWord = new Dictionary<string, SpreadMeasure>(StringComparer.Ordinal)
    {
        ["cv"] = SpreadMeasure.CoefficientOfVariation,
        ["sd"] = SpreadMeasure.StandardDeviation,
        ["change"] = SpreadMeasure.Change,
    };

    public static IReadOnlyCollection<string> Kinds { get; } = [.. KindByWord.Keys];

    public static IReadOnlyCollection<string> Uses { get; } = [.. UseByWord.Keys];

    public static IReadOnlyCollection<string> Measures { get; } = [.. MeasureByWord.Keys];

    public static SpreadKind Kind(string word) => KindByWord[word];

    public static SpreadUse Use(string word) => UseByWord[word];

    public static SpreadMeasure Measure(string word) => MeasureByWord[word];
}
