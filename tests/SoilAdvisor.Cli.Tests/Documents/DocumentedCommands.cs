using System.Text.RegularExpressions;

namespace SoilAdvisor.Cli.Tests.Documents;

/// <summary>Finds what a document tells its reader to type.</summary>
internal static partial class DocumentedCommands
{
    /// <summary>Every line of the document's sh blocks that begins with the command's name.</summary>
    public static IEnumerable<string> Of(string document) => Blocks(document, "sh").SelectMany(block => block.Split('\n')).Where(line => line.StartsWith("soil ", StringComparison.Ordinal));

    /// <summary>Every fenced block of one language.</summary>
    public static IEnumerable<string> Blocks(string document, string language) => Fences(document).Where(f => f.Language == language).Select(f => f.Text);

    /// <summary>Every fenced block in order.</summary>
    public static IEnumerable<(string Language, string Text)> Fences(string document) =>
        Fence().Matches(document).Select(m => (m.Groups["language"].Value, m.Groups["text"].Value));

    /// <summary>Splits a line as a shell does, as far as the documents use it: blanks, and double quotes around words with blanks.</summary>
    public static IReadOnlyList<string> Words(string line) => [.. Word().Matches(line).Select(m => m.Value.Trim('"'))];

    [GeneratedRegex(@"^```(?<language>\w+)\n(?<text>.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Fence();

    [GeneratedRegex("\"[^\"]*\"|\\S+", RegexOptions.CultureInvariant)]
    private static partial Regex Word();
}
