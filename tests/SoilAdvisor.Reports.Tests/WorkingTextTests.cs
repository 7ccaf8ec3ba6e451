using System.Globalization;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Tests;

public sealed class WorkingTextTests
{
    // What no pocket calculator has a key for, and why the line still stands.
    private static readonly Dictionary<string, string> NotTyped = new()
    {
        ["probability-below-limit"] = "needs a table of the normal distribution",
        ["probability-below-ph-limit"] = "needs a table of the normal distribution",
        ["standard-score"] = "needs a table of the normal distribution",
        ["cores-for-precision-student"] = "needs a table of Student's distribution",
        ["cores-for-precision"] = "says in words that it rounds up to whole cores",
        ["dilute-water-ph-from-potassium-chloride"] = "needs the key for a logarithm",
        ["quadratic-rate-of-test-index"] = "names its lowest point in words",
        ["ph-method-conversion"] = "a line drawn at random leaves the pH scale and is refused",
        ["pooled-result"] = "names its weights beside the equation",
        ["pooled-spread"] = "names its weights beside the equation",
        ["pooled-ph"] = "names its weights beside the equation",
    };

    public static TheoryData<string> FormulaIds => [.. Formulas.All.Select(f => f.Id).Except(NotTyped.Keys)];

    [Fact]
    public void What_no_calculator_has_a_key_for_is_a_formula_of_the_catalogue() =>
        Assert.Empty(NotTyped.Keys.Except(Formulas.All.Select(f => f.Id)));

    [Theory]
    [MemberData(nameof(FormulaIds))]
    public void A_pocket_calculator_reproduces_each_printed_line(string id)
    {
        var formula = Formulas.All.Single(f => f.Id == id);
        var random = new Random(7);
        var reproduced = 0;
        for (var attempt = 0; attempt < 200; attempt++)
        {
            var sheet = new WorkingSheet();
            var inputs = formula.Inputs.ToDictionary(s => s.Name, s => Within(s, random));
            if (!formula.Calculate(inputs, sheet).IsGiven)
            {
                continue;
            }

            var rows = WorkingText.Line(sheet.Lines[0]).Split("\n   ");
            Assert.Equal(formula.Shown, rows[1]);
            var numbersPutIn = rows[2][(rows[2].IndexOf(" = ", StringComparison.Ordinal) + 3)..];
            var printed = rows[3][(rows[3].IndexOf(" = ", StringComparison.Ordinal) + 3)..].Split(' ')[0];
            var typed = PocketCalculator.Value(numbersPutIn, Compared(formula, inputs));
            var result = double.Parse(printed, NumberStyles.Float, CultureInfo.InvariantCulture);
            Assert.True(Math.Abs(typed - result) <= 1e-9 + (2e-6 * Scale(inputs, result)), $"{numbersPutIn}: a calculator shows {typed.ToString("R", CultureInfo.InvariantCulture)}, printed is {printed}.");
            reproduced++;
        }

        Assert.True(reproduced >= 20, $"Only {reproduced} of 200 tries gave a result.");
    }

    [Fact]
    public void A_line_reads_as_on_a_board()
    {
        var sheet = new WorkingSheet();
        sheet.Section("Bed 3: phosphate");
        OxideConversions.PhosphorusToPhosphate.Of(Rate<P>.FromPoundsPerAcre(10), sheet, Origin.Given("line 4, column P"));

        // 10 × (61.947524 + 79.995) / 61.947524 = 22.91335 by hand.
        Assert.Equal(
            """
            1. Phosphorus counted as phosphate [atomic-masses, from memory]
               P2O5 = P × (2 × 30.973762 + 5 × 15.999) / (2 × 30.973762)
               P2O5 = 10 × (2 × 30.973762 + 5 × 15.999) / (2 × 30.973762)
               P2O5 = 22.91335 lb/acre
               with P = 10 lb/acre: phosphorus, given (line 4, column P)
            """,
            WorkingText.Line(sheet.Lines[0]));
    }

    [Fact]
    public void A_look_up_names_its_row_and_its_place()
    {
        var sheet = new WorkingSheet();
        sheet.LookUp("rating", "P on the scale", "26 ≤ P ≤ 50 mg/kg", [new WorkingInput("P", "soil test", null, "< 30", "mg/kg", Origin.Line(0))], "Optimum", new Citation("guide", "Table 4", Evidence.Seen));

        Assert.Equal("1. P on the scale [guide, Table 4]\n   26 ≤ P ≤ 50 mg/kg\n   → Optimum\n   with P = < 30 mg/kg: soil test, from an earlier line", WorkingText.Line(sheet.Lines[0]));
    }

    [Theory]
    [InlineData("P × P2O5 / 2", "3 × 7 / 2")]
    [InlineData("(P2O5 − P)²", "(7 − 3)²")]
    [InlineData("Pmax + maxP + P", "Pmax + maxP + 3")]
    [InlineData("pH × N", "pH × (-1.5)")]
    public void A_symbol_is_replaced_only_where_it_stands_alone(string shown, string expected) =>
        Assert.Equal(expected, WorkingText.NumbersPutIn(shown, [Number("P", 3), Number("P2O5", 7), Number("N", -1.5)]));

    [Theory]
    [InlineData(0.1234567890123, "0.123456789")]
    [InlineData(1234567.890123, "1234567.89")]
    [InlineData(43560, "43560")]
    [InlineData(1d / 3, "0.3333333333")]
    public void An_input_carries_ten_significant_digits(double value, string expected) =>
        Assert.Equal(expected, WorkingText.NumbersPutIn("x", [Number("x", value)]));

    [Fact]
    public void A_title_cannot_send_commands_to_a_terminal()
    {
        var line = new WorkingLine(1, "s", "f", "red\u001b[31m\r\nline", "x", [], "", null, "y", "", Citation.OurArithmetic);

        Assert.Equal("1. red [31m  line [our-arithmetic]\n   x\n   → y", WorkingText.Line(line));
    }

    private static WorkingInput Number(string symbol, double value) => new(symbol, symbol, value, null, "", Origin.Unstated);

    private static double Within(Symbol symbol, Random random)
    {
        var low = symbol.Min ?? Math.Min(0, symbol.Max ?? 0);
        var high = symbol.Max ?? Math.Max(low + 1, 90);
        return low + (random.NextDouble() * (high - low));
    }

    // "x below C; y from C on": the left side of the comparison is the soil test, the input that is subtracted from C.
    private static double? Compared(IFormula formula, Dictionary<string, double> inputs) =>
        formula.Shown.Contains(" below C", StringComparison.Ordinal) ? inputs["K"] : null;

    // Ten digits in, a difference of two near numbers out: the loss is measured on the larger of what went in and what came out.
    private static double Scale(Dictionary<string, double> inputs, double result) =>
        Math.Max(Math.Abs(result), inputs.Values.Max(Math.Abs) * 1e-3);
}
