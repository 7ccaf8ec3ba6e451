using SoilAdvisor.Agronomy.YearsAhead;

namespace SoilAdvisor.ReferenceTables.Kinds;

/// <summary>The words of the table of test changes.</summary>
internal static class MovementWords
{
    private static readonly IReadOnlyDictionary<string, MovementUse> UseByWord = new Dictionary<string, MovementUse>(StringComparer.Ordinal)
    {
        ["projection"] = MovementUse.Projection,
        ["drawdown"] = MovementUse.Drawdown,
        ["information"] = MovementUse.Information,
    };

    public static IReadOnlyCollection<string> Uses { get; } = [.. UseByWord.Keys];

    public static MovementUse Use(string word) => UseByWord[word];
}
