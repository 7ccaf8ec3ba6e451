using System.Text;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports;

/// <summary>
/// Writes a line of working as a teacher writes it on a board: the equation, the numbers put in, the result with its unit, and where each
/// number comes from. Inputs carry up to 10 significant digits and results 7, so that a pocket calculator reproduces each result.
/// </summary>
public static class WorkingText
{
    // Room for a hand.
    private const string Blank = "____________";

    private const int InputDigits = 10;
    private const int ResultDigits = 7;

    /// <summary>The line as plain text over several rows; sources are named by id and place.</summary>
    /// <param name="line">The line.</param>
    public static string Line(WorkingLine line) => Line(line, Named);

    internal static string Line(WorkingLine line, Func<Citation, string> mark)
    {
        var text = new StringBuilder();
        text.Append(System.Globalization.CultureInfo.InvariantCulture, $"{line.Number}. {SafeText.Of(line.Title)} {mark(line.Source)}");
        foreach (var row in Board(line))
        {
            text.Append("\n   ").Append(SafeText.Of(row));
        }

        foreach (var input in line.Inputs)
        {
            text.Append("\n   with ").Append(SafeText.Of(Given(input, mark)));
        }

        return text.ToString();
    }

    // Equation, numbers put in, result: the second row falls away where nothing can be put in.
    private static IEnumerable<string> Board(WorkingLine line)
    {
        if (line.Shown.Length > 0)
        {
            yield return line.Shown;
        }

        var split = line.Shown.IndexOf(" = ", StringComparison.Ordinal);
        if (line.Result is { } result)
        {
            if (split > 0)
            {
                yield return $"{line.Shown[..split]} = {NumbersPutIn(line.Shown[(split + 3)..], line.Inputs)}";
            }

            yield return $"{line.ResultSymbol} = {WithUnit(Figure.Calculator(result, ResultDigits), line.ResultUnit)}";
        }
        else
        {
            yield return line.IsLookUp
                ? $"→ {line.ResultText ?? Blank}"
                : $"{line.ResultSymbol} = {WithUnit(Blank, line.ResultUnit)}";
        }
    }

    /// <summary>The right-hand side with each symbol replaced by its number. The longest symbol goes first, so that "P" leaves "P2O5" alone.</summary>
    internal static string NumbersPutIn(string rightHandSide, IReadOnlyList<WorkingInput> inputs)
    {
        var symbols = inputs.Where(i => i.Value is not null && i.Symbol.Length > 0).OrderByDescending(i => i.Symbol.Length).ToList();
        var text = new StringBuilder();
        for (var at = 0; at < rightHandSide.Length;)
        {
            var found = symbols.FirstOrDefault(s => StandsAt(rightHandSide, at, s.Symbol));
            if (found is null)
            {
                text.Append(rightHandSide[at++]);
                continue;
            }

            var number = Figure.Calculator(found.Value!.Value, InputDigits);
            text.Append(found.Value < 0 ? $"({number})" : number);
            at += found.Symbol.Length;
        }

        return text.ToString();
    }

    private static bool StandsAt(string text, int at, string symbol)
    {
        var end = at + symbol.Length;
        return string.CompareOrdinal(text, at, symbol, 0, symbol.Length) == 0
            && !(at > 0 && IsOfAWord(text[at - 1]) && IsOfAWord(symbol[0]))
            && !(end < text.Length && IsOfAWord(text[end]) && IsOfAWord(symbol[^1]));
    }

    private static bool IsOfAWord(char c) => char.IsLetterOrDigit(c) || c == '_';

    private static string Given(WorkingInput input, Func<Citation, string> mark)
    {
        var amount = input.Value is { } value
            ? WithUnit(Figure.Calculator(value, InputDigits), input.Unit)
            : WithUnit(input.Text ?? Blank, input.Unit);
        return $"{input.Symbol} = {amount}: {input.Name}, {From(input.From, mark)}";
    }

    private static string From(Origin origin, Func<Citation, string> mark) => origin switch
    {
        Origin.GivenBy given => $"given ({given.Where})",
        Origin.CitedFrom cited => mark(cited.Source),
        Origin.ComputedOn { Number: > 0 } computed => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"from line {computed.Number}"),
        _ => "from an earlier line",
    };

    private static string Named(Citation source) =>
        $"[{source.SourceId}{(source.Locator is { } place ? ", " + place : "")}{(source.Evidence == Evidence.FromMemory ? ", from memory" : "")}]";

    private static string WithUnit(string number, string unit) => unit.Length is 0 || unit == "pH" ? number : $"{number} {unit}";
}
