using System.Text.RegularExpressions;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>The shape of ids.</summary>
internal static partial class KebabCase
{
    public const string Rule = "use small letters and digits, joined by single hyphens.";

    public static bool IsMatch(string text) => Shape().IsMatch(text);

    [GeneratedRegex(@"\A[a-z0-9]+(-[a-z0-9]+)*\z")]
    private static partial Regex Shape();
}
