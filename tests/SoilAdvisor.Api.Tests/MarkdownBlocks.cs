namespace SoilAdvisor.Api.Tests;

/// <summary>Fenced blocks of a page under docs.</summary>
internal static class MarkdownBlocks
{
    public static string Folder { get; } = Path.GetFullPath(Path.Combine(SoilAdvisor.ReferenceTables.Tables.FindFolder(AppContext.BaseDirectory), "..", "docs"));

    public static IReadOnlyList<(string Info, string Text)> Of(string page)
    {
        var blocks = new List<(string, string)>();
        (string Info, List<string> Lines)? open = null;
        foreach (var line in File.ReadAllLines(Path.Combine(Folder, page)))
        {
            if (!line.StartsWith("```", StringComparison.Ordinal))
            {
                open?.Lines.Add(line);
            }
            else if (open is { } block)
            {
                blocks.Add((block.Info, string.Join('\n', block.Lines) + "\n"));
                open = null;
            }
            else
            {
                open = (line[3..].Trim(), []);
            }
        }

        return blocks;
    }
}
