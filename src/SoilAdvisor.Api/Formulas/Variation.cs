using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Formulas;

/// <summary>One symbol varied in equal steps while all others stay: what a teacher shows a class.</summary>
internal static class Variation
{
    private const int UsualSteps = 5;
    private const int Digits = 10;

    public static IReadOnlyList<VariedAnswer> Of(IFormula formula, IReadOnlyDictionary<string, double> inputs, WrittenVariation variation)
    {
        var (from, to) = (variation.From!.Value.Number!.Value, variation.To!.Value.Number!.Value);
        var steps = (int)(variation.Steps?.Number ?? UsualSteps);
        return [.. Enumerable.Range(0, steps).Select(i => One(formula, inputs, variation.Symbol!, from + ((to - from) * i / (steps - 1))))];
    }

    private static VariedAnswer One(IFormula formula, IReadOnlyDictionary<string, double> inputs, string symbol, decimal value)
    {
        var numbers = new Dictionary<string, double>(inputs, StringComparer.Ordinal) { [symbol] = (double)value };
        return formula.Calculate(numbers).TryGet(out var result, out var reason) && (reason = FormulaInputs.TooLarge(formula, result)) is null
            ? new VariedAnswer(value, Units.Rounded(result, Digits), null)
            : new VariedAnswer(value, null, Fault.Of(PointerPath.Down("/inputs", symbol), reason!));
    }
}
