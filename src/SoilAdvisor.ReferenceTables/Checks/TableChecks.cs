using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>All checks.</summary>
internal static class TableChecks
{
    public static IReadOnlyList<ITableCheck> All { get; } =
    [
    ];

    /// <summary>Every code that a problem can carry.</summary>
    public static IReadOnlyList<string> Codes { get; } = [.. FolderReader.Codes, .. All.Select(check => check.Code)];
}
