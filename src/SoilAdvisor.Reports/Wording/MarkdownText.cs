using System.Text;

namespace SoilAdvisor.Reports.Wording;

/// <summary>Text made safe for Markdown: it can start no table cell, link, emphasis, code or tag.</summary>
internal static class MarkdownText
{
    public static string Escape(string text)
    {
        var clean = SafeText.Of(text);
        var escaped = new StringBuilder(clean.Length + 8);
        for (var i = 0; i < clean.Length; i++)
        {
            if (NeedsEscape(clean, i))
            {
                escaped.Append('\\');
            }

            escaped.Append(clean[i]);
        }

        return escaped.ToString();
    }

    /// <summary>The same at the start of a line, where more signs have a meaning: heading, list, quotation, numbered list.</summary>
    public static string AtLineStart(string escaped)
    {
        var text = escaped.TrimStart();
        if (text.Length == 0)
        {
            return text;
        }

        if (text[0] is '#' or '>' or '+' or '-' or '=' or ':')
        {
            return "\\" + text;
        }

        var digits = text.TakeWhile(char.IsAsciiDigit).Count();
        return digits > 0 && digits < text.Length && (text[digits] is '.' or ')') && (digits + 1 == text.Length || text[digits + 1] == ' ')
            ? text.Insert(digits, "\\")
            : text;
    }

    public static int LongestRun(string text, char sign)
    {
        var (longest, run) = (0, 0);
        foreach (var c in text)
        {
            run = c == sign ? run + 1 : 0;
            longest = Math.Max(longest, run);
        }

        return longest;
    }

    // "< 5" stays readable: a tag needs a letter or a mark right behind its bracket, a character reference needs its semicolon.
    private static bool NeedsEscape(string text, int at) => text[at] switch
    {
        '\\' or '`' or '*' or '[' or ']' or '|' or '~' => true,
        '_' => at == 0 || at == text.Length - 1 || !char.IsLetterOrDigit(text[at - 1]) || !char.IsLetterOrDigit(text[at + 1]),
        '<' => at + 1 < text.Length && (char.IsLetter(text[at + 1]) || text[at + 1] is '/' or '!' or '?'),
        '&' => text.IndexOf(';', at) > at + 1,
        _ => false,
    };
}
