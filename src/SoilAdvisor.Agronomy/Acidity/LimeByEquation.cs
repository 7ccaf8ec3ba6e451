using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>The equations that a lime method may name, each with the parameters that its table must hold.</summary>
public static class LimeByEquation
{
    private static readonly Dictionary<string, (string[] Parameters, Func<LimeQuestion, LimeMethod, Answer<LimeRequirement>> Of)> Equations = new(StringComparer.Ordinal)
    {
        [LimeFormulas.MehlichNorthCarolina.Id] = (["acidity-coefficient", "buffer-start-ph", "reference-ph", "residual-loss-mineral", "residual-loss-organic"], MehlichLime.NorthCarolina),
        [LimeFormulas.MehlichNortheast.Id] = (["acidity-coefficient", "buffer-start-ph", "square-coefficient", "linear-coefficient", "lime-per-acidity"], MehlichLime.Northeast),
        [LimeFormulas.ModifiedMehlichPennsylvania.Id] = (["acidity-limit", "fixed-rate-target-6-5", "rate-per-acidity-target-6-5", "rate-per-acidity-target-7-0"], PennsylvaniaLime.Of),
        [LimeFormulas.AdamsEvans.Id] = (AdamsEvansLime.Parameters, AdamsEvansLime.AdamsEvans),
        [LimeFormulas.MooreSikora.Id] = (AdamsEvansLime.Parameters, AdamsEvansLime.MooreSikora),
        [LimeFormulas.SingleAddition.Id] = (["equilibrium-linear", "equilibrium-square", "lime-per-capacity"], SingleAdditionLime.Of),
        [LimeFormulas.ByTargetEquation.Id] = ([], LimeByTargetEquation.Of),
    };

    /// <summary>Symbols that the parameters of an equation must hold; empty for one that needs none or is not held.</summary>
    /// <param name="formula">Id of the formula.</param>
    public static IReadOnlyList<string> ParametersOf(string formula) => Equations.TryGetValue(formula, out var equation) ? equation.Parameters : [];

    internal static Answer<LimeRequirement> Of(LimeQuestion question, LimeMethod method) => method.FormulaId is { } id && Equations.TryGetValue(id, out var equation)
        ? equation.Of(question, method)
        : Answer<LimeRequirement>.Refused("unknown-lime-formula", $"{method.Title} names the formula {method.FormulaId}, which is not in the catalogue.", "Check the reference tables.");

    internal static RateParameter Parameter(this LimeMethod method, string symbol) => method.Parameters.First(p => p.Symbol == symbol);

    internal static Coefficient Coefficient(this LimeMethod method, string symbol) => new((double)method.Parameter(symbol).Value);

    internal static Origin From(this LimeMethod method, string symbol) => Origin.From(method.Parameter(symbol).Source);

    internal static SoilPh Ph(decimal value) => new((double)value);

    /// <summary>The acidity that a buffer found, in the unit of its method.</summary>
    internal static Answer<BufferAcidity<TBuffer>> AcidityBy<TBuffer>(
        LimeQuestion question,
        LimeMethod method,
        Formula<(Coefficient PerUnit, BufferPh<TBuffer> Start, BufferPh<TBuffer> Buffer), BufferAcidity<TBuffer>> formula)
        where TBuffer : IBuffer
    {
        var reading = question.Test.Of(Analyte.BufferPh)!;
        return BufferPh<TBuffer>.Of(reading).Select(measured =>
        {
            var start = method.Parameter("buffer-start-ph").Value;
            if (reading.Amount.Number >= start)
            {
                question.Assume("buffer-at-start", Invariant($"The buffer pH {reading.Amount.Number} is at or above the buffer's start {start}: it found no acidity to neutralise."), method.Source);
            }

            return formula.Of(
                (method.Coefficient("acidity-coefficient"), new BufferPh<TBuffer>((double)start), measured),
                question.Working,
                method.From("acidity-coefficient"),
                method.From("buffer-start-ph"),
                Origin.Given(reading.Where));
        });
    }
}
