using System.Text.RegularExpressions;

namespace SoilAdvisor.Cli.Files;

/// <summary>A column heading: a name and, in brackets, its unit.</summary>
/// <param name="Text">As written in the file.</param>
/// <param name="Name">Name in lower case with single spaces.</param>
/// <param name="Unit">Unit; null when none is written.</param>
internal sealed partial record Heading(string Text, string Name, string? Unit)
{
    public static Heading Of(string text)
    {
        var parts = NameAndUnit().Match(text);
        var unit = parts.Groups["unit"];
        return new Heading(text, Plain(parts.Groups["name"].Value), unit.Success && unit.Value.Trim().Length > 0 ? unit.Value.Trim() : null);
    }

    /// <summary>The form in which names are compared: case, underscores, hyphens and the two spellings of centre do not matter.</summary>
    private static string Plain(string name) => Spaces()
        .Replace(name.Replace('_', ' ').Replace('-', ' '), " ")
        .Trim()
        .ToLowerInvariant()
        .Replace("center", "centre", StringComparison.Ordinal);

    [GeneratedRegex(@"^(?<name>[^()]*)(\((?<unit>[^()]*)\)\s*)?", RegexOptions.CultureInvariant)]
    private static partial Regex NameAndUnit();

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant)]
    private static partial Regex Spaces();
}
