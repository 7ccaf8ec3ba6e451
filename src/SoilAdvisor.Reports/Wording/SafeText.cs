using System.Globalization;
using System.Text;

namespace SoilAdvisor.Reports.Wording;

/// <summary>
/// Text of the user or of a table, made fit to stand in a line: no control characters (a terminal would obey them), no marks that turn the
/// reading direction (they would let one bed pose as another), no broken halves of a character.
/// </summary>
internal static class SafeText
{
    public static string Of(string text)
    {
        StringBuilder? cleaned = null;
        for (var i = 0; i < text.Length; i++)
        {
            var kept = Kept(text, i);
            if (cleaned is null && kept != text[i])
            {
                cleaned = new StringBuilder(text, 0, i, text.Length);
            }

            cleaned?.Append(kept);
        }

        return cleaned?.ToString() ?? text;
    }

    private static char Kept(string text, int at)
    {
        var c = text[at];
        if (char.IsSurrogate(c))
        {
            var paired = (char.IsHighSurrogate(c) && at + 1 < text.Length && char.IsLowSurrogate(text[at + 1]))
                || (char.IsLowSurrogate(c) && at > 0 && char.IsHighSurrogate(text[at - 1]));
            return paired ? c : '\uFFFD';
        }

        return char.GetUnicodeCategory(c) switch
        {
            UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => ' ',
            UnicodeCategory.Format => '\uFFFD',
            _ => c,
        };
    }
}
