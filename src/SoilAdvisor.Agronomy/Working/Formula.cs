using System.Globalization;

namespace SoilAdvisor.Agronomy.Working;

/// <summary>
/// An equation as an object: symbols, units, valid range, citation and plain arithmetic on typed quantities.
/// Evaluating it is an ordinary call; writing it down is the caller's choice.
/// </summary>
/// <typeparam name="TIn">Inputs, normally a small record of quantities.</typeparam>
/// <typeparam name="TOut">Result, normally a quantity.</typeparam>
public sealed class Formula<TIn, TOut> : IFormula
{
    private readonly FormulaInput<TIn>[] inputs;
    private readonly FormulaOutput<TOut> output;
    private readonly Func<double[], TIn> build;
    private readonly Func<TIn, TOut> arithmetic;

    /// <summary>Makes a formula.</summary>
    /// <param name="id">Permanent kebab-case id.</param>
    /// <param name="title">What it answers.</param>
    /// <param name="shown">The equation as written on a board.</param>
    /// <param name="source">Where it stands.</param>
    /// <param name="inputs">Symbols with their readers, in the order of the equation.</param>
    /// <param name="output">The result's symbol with its reader.</param>
    /// <param name="build">Makes the typed inputs from numbers in the symbols' units, same order.</param>
    /// <param name="arithmetic">The arithmetic.</param>
    /// <param name="whyUnchecked">Why no published example checks it; null when one does.</param>
    public Formula(
        string id,
        string title,
        string shown,
        Citation source,
        FormulaInput<TIn>[] inputs,
        FormulaOutput<TOut> output,
        Func<double[], TIn> build,
        Func<TIn, TOut> arithmetic,
        string? whyUnchecked = null)
    {
        (Id, Title, Shown, Source, WhyUnchecked) = (id, title, shown, source, whyUnchecked);
        (this.inputs, this.output, this.build, this.arithmetic) = (inputs, output, build, arithmetic);
        Inputs = [.. inputs.Select(i => i.Symbol)];
    }

    /// <inheritdoc/>
    public string Id { get; }

    /// <inheritdoc/>
    public string Title { get; }

    /// <inheritdoc/>
    public string Shown { get; }

    /// <inheritdoc/>
    public Citation Source { get; }

    /// <inheritdoc/>
    public IReadOnlyList<Symbol> Inputs { get; }

    /// <inheritdoc/>
    public Symbol Result => output.Symbol;

    /// <inheritdoc/>
    public string? WhyUnchecked { get; }

    /// <summary>Evaluates the formula. The numbers are the same with and without working.</summary>
    /// <param name="x">The typed inputs.</param>
    /// <param name="working">Receives a line; null for none.</param>
    /// <param name="from">Where each input comes from, in the order of the symbols; ignored without working.</param>
    public TOut Of(TIn x, WorkingSheet? working = null, params ReadOnlySpan<Origin> from)
    {
        var y = arithmetic(x);
        working?.Line(this, x, y, from);
        return y;
    }

    /// <inheritdoc/>
    public Answer<double> Calculate(IReadOnlyDictionary<string, double> inputs, WorkingSheet? working = null, IReadOnlyList<Origin>? from = null)
    {
        var faults = Faults(inputs).ToList();
        if (faults.Count > 0)
        {
            var symbols = string.Join(", ", Inputs.Select(s => s.Unit.Length == 0 ? s.Name : $"{s.Name} ({s.Unit})"));
            return Answer<double>.Refused("formula-inputs", string.Join(" ", faults), $"Give exactly these, within their limits: {symbols}.");
        }

        TIn x;
        TOut result;
        try
        {
            x = build([.. Inputs.Select(s => inputs[s.Name])]);
            result = arithmetic(x);
        }
        catch (ArgumentException)
        {
            // A quantity that cannot exist: too large a number, or nothing to divide by.
            return Answer<double>.Refused("formula-no-result", $"{Shown} has no finite result for these numbers.", "Check for a division by zero or a number far too large.");
        }

        var y = output.Read(result);
        if (!double.IsFinite(y))
        {
            return Answer<double>.Refused("formula-no-result", $"{Shown} has no finite result for these numbers.", "Check for a division by zero.");
        }

        if (working is not null)
        {
            Origin[] origins = from is null ? [.. Inputs.Select(_ => Origin.Given("your input"))] : [.. from];
            working.Line(this, x, result, origins);
        }

        return Answer<double>.Given(y);
    }

    internal WorkingInput[] Read(TIn x, ReadOnlySpan<Origin> from)
    {
        var read = new WorkingInput[inputs.Length];
        for (var i = 0; i < inputs.Length; i++)
        {
            var symbol = inputs[i].Symbol;
            read[i] = new WorkingInput(symbol.Name, symbol.Meaning, inputs[i].Read(x), null, symbol.Unit, i < from.Length ? from[i] : Origin.Unstated);
        }

        return read;
    }

    internal double Read(TOut y) => output.Read(y);

    private IEnumerable<string> Faults(IReadOnlyDictionary<string, double> given)
    {
        foreach (var unknown in given.Keys.Except(Inputs.Select(s => s.Name), StringComparer.Ordinal))
        {
            yield return $"\"{unknown}\" is not a symbol of this formula.";
        }

        foreach (var symbol in Inputs)
        {
            if (!given.TryGetValue(symbol.Name, out var value))
            {
                yield return $"{symbol.Name} ({symbol.Meaning}) is missing.";
            }
            else if (!double.IsFinite(value))
            {
                yield return $"{symbol.Name} is not a number.";
            }
            else if (value < symbol.Min || value > symbol.Max)
            {
                yield return string.Create(CultureInfo.InvariantCulture, $"{symbol.Name} is {value} {symbol.Unit}; it must lie from {symbol.Min?.ToString(CultureInfo.InvariantCulture) ?? "any"} to {symbol.Max?.ToString(CultureInfo.InvariantCulture) ?? "any"} {symbol.Unit}.");
            }
        }
    }
}
