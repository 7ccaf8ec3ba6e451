namespace SoilAdvisor.ReferenceTables;

/// <summary>One fault of the reference tables, with the place where it can be mended.</summary>
/// <param name="File">Path below the folder of tables, with forward slashes.</param>
/// <param name="Line">Line in the file, from 1.</param>
/// <param name="Column">Column of a table or member of a document; null when the fault is the file's or the row's.</param>
/// <param name="Code">Stable kebab-case code.</param>
/// <param name="Words">What is wrong and what to do.</param>
public sealed record TableProblem(string File, int Line, string? Column, string Code, string Words)
{
    /// <summary>The order in which problems are printed: by file, line, column and code.</summary>
    internal static IOrderedEnumerable<TableProblem> Sorted(IEnumerable<TableProblem> problems) => problems
        .OrderBy(p => p.File, StringComparer.Ordinal)
        .ThenBy(p => p.Line)
        .ThenBy(p => p.Column, StringComparer.Ordinal)
        .ThenBy(p => p.Code, StringComparer.Ordinal)
        .ThenBy(p => p.Words, StringComparer.Ordinal);

    /// <summary>One line: <c>file(line) column: words [code]</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{File}({Line}){(Column is null ? "" : " " + Column)}: {Words} [{Code}]");
}
