using System.Text;

namespace SoilAdvisor.Cli.Screens;

/// <summary>Breaks a text between words, with a hanging indent. The terminal library can do it too, but a plan has a thousand such lines and it takes seconds for them.</summary>
internal static class Wrapped
{
    /// <summary>The text in lines of at most so many columns; a word that is longer stands alone on its line.</summary>
    /// <param name="text">The text; line ends in it are taken as blanks.</param>
    /// <param name="width">Columns of the screen.</param>
    /// <param name="first">What the first line begins with; the others are indented as far.</param>
    public static string Text(string text, int width, string first = "")
    {
        var lines = new StringBuilder(first);
        var column = first.Length;
        foreach (var word in text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            if (column > first.Length && column + 1 + word.Length > width)
            {
                lines.Append('\n').Append(' ', first.Length);
                column = first.Length;
            }
            else if (column > first.Length)
            {
                lines.Append(' ');
                column++;
            }

            lines.Append(Visible(word));
            column += word.Length;
        }

        return lines.ToString();
    }

    /// <summary>The text with a mark in place of each control character: a file must not steer the reader's terminal.</summary>
    public static string Visible(string text) =>
        text.Any(char.IsControl) ? string.Concat(text.Select(c => char.IsControl(c) ? '\uFFFD' : c)) : text;
}
