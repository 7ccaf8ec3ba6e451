using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Formulas;

/// <summary>The numbers of a teacher, by symbol.</summary>
internal static class FormulaInputs
{
    // What a decimal holds with room for its rounding.
    private const double LargestShown = 1e27;

    public static Dictionary<string, double> Read(IReadOnlyDictionary<string, WrittenNumber>? inputs, FaultList faults)
    {
        var numbers = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var (symbol, written) in inputs ?? new Dictionary<string, WrittenNumber>())
        {
            var pointer = PointerPath.Down("/inputs", symbol);
            var judged = new NumberValidator(symbol.Length > Limits.IdLetters ? "The input" : symbol).Validate(new NumberValidator.Number(written));
            foreach (var failure in judged.Errors)
            {
                faults.Add(pointer, failure.ErrorCode, failure.ErrorMessage, (string)failure.CustomState);
            }

            numbers[symbol] = (double)(written.Number ?? 0);
        }

        return numbers;
    }

    /// <summary>The refusal of a result that cannot be written out; null for one that can.</summary>
    public static Refusal? TooLarge(IFormula formula, double result) => Math.Abs(result) > LargestShown
        ? new Refusal("formula-no-result", $"{formula.Shown} gives a number that is too large to be written out.", "Give numbers of a field's size.")
        : null;
}
