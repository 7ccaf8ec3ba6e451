namespace SoilAdvisor.Cli.Files;

/// <summary>One row of a list.</summary>
/// <param name="Line">Its line in the file, counted from 1.</param>
/// <param name="Cells">Its cells without surrounding blanks.</param>
internal sealed record SheetRow(long Line, IReadOnlyList<string> Cells);
