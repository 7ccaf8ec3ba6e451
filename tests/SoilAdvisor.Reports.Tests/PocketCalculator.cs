using System.Globalization;

namespace SoilAdvisor.Reports.Tests;

/// <summary>
/// Types a printed line of numbers into a calculator: + − × / ² √ ln log10 exp arccos π max min, brackets, "[a ≤ b ≤ c]", "rounded up", and the two forms in which an equation names a
/// case ("x where a &gt; b; otherwise y", "x below a; y from a on"). Knows nothing of the formulas, only what is printed.
/// </summary>
internal sealed class PocketCalculator
{
    private readonly string text;
    private int at;

    private PocketCalculator(string text) => this.text = text.Replace(" ", "", StringComparison.Ordinal);

    /// <summary>Value of a printed right-hand side. For "x below a; y from a on" the reader must say what is compared with a.</summary>
    public static double Value(string printed, double? compared = null)
    {
        if (Split(printed, " where ") is var (x, rest) && Split(rest, "; otherwise ") is var (condition, y))
        {
            var sides = condition.Split('>');
            return Value(sides[0]) > Value(sides[1]) ? Value(x) : Value(y);
        }

        if (Split(printed, " below ") is var (below, cases) && Split(cases, "; ") is var (limit, other))
        {
            return compared < Value(limit) ? Value(below) : Value(other[..other.IndexOf(" from ", StringComparison.Ordinal)]);
        }

        if (Split(printed, ", rounded up") is var (exact, _))
        {
            return Math.Ceiling(Value(exact) - 1e-9);
        }

        var calculator = new PocketCalculator(printed);
        var value = calculator.Sum();
        return calculator.at == calculator.text.Length ? value : throw new FormatException($"Cannot type \"{printed}\" into a calculator (at {calculator.at}).");
    }

    private static (string, string)? Split(string text, string mark) =>
        text.IndexOf(mark, StringComparison.Ordinal) is >= 0 and var i ? (text[..i], text[(i + mark.Length)..]) : null;

    private double Sum()
    {
        var value = Takes("−") ? -Product() : Product();
        while (true)
        {
            if (Takes("+"))
            {
                value += Product();
            }
            else if (Takes("−"))
            {
                value -= Product();
            }
            else
            {
                return value;
            }
        }
    }

    private double Product()
    {
        var value = Factor();
        while (true)
        {
            if (Takes("×"))
            {
                value *= Factor();
            }
            else if (Takes("/"))
            {
                value /= Factor();
            }
            else
            {
                return value;
            }
        }
    }

    private double Factor()
    {
        var value = Takes("√") ? Math.Sqrt(text[at] == '(' ? Bracket()[0] : Number())
            : Takes("ln") ? Math.Log(Bracket()[0])
            : Takes("log10") ? Math.Log10(Bracket()[0])
            : Takes("exp") ? Math.Exp(Bracket()[0])
            : Takes("arccos") ? Math.Acos(Bracket()[0])
            : Takes("π") ? Math.PI
            : Takes("max") ? Bracket().Max()
            : Takes("min") ? Bracket().Min()
            : Takes("[") ? Holds()
            : text[at] == '(' ? Bracket()[0]
            : Number();
        return Takes("²") ? value * value : value;
    }

    // "[a ≤ b ≤ c]" counts 1 where it holds and 0 where it does not.
    private double Holds()
    {
        var low = Sum();
        Expect("≤");
        var value = Sum();
        Expect("≤");
        var high = Sum();
        Expect("]");
        return low <= value && value <= high ? 1 : 0;
    }

    private List<double> Bracket()
    {
        Expect("(");
        var values = new List<double> { Sum() };
        while (Takes(","))
        {
            values.Add(Sum());
        }

        Expect(")");
        return values;
    }

    private double Number()
    {
        var start = at;
        at += at < text.Length && text[at] == '-' ? 1 : 0;
        while (at < text.Length && (char.IsAsciiDigit(text[at]) || text[at] == '.'))
        {
            at++;
        }

        return double.Parse(text.AsSpan(start, at - start), NumberStyles.Float, CultureInfo.InvariantCulture);
    }

    private bool Takes(string sign)
    {
        if (string.CompareOrdinal(text, at, sign, 0, sign.Length) != 0)
        {
            return false;
        }

        at += sign.Length;
        return true;
    }

    private void Expect(string sign)
    {
        if (!Takes(sign))
        {
            throw new FormatException($"\"{sign}\" is missing at {at} of \"{text}\".");
        }
    }
}
