using CsCheck;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.PublishedChecks.Laws;

public sealed class FormulaLaws
{
    public static TheoryData<string> Ids => [.. Formulas.All.Select(f => f.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_working_changes_no_bit_and_shows_the_numbers_it_was_given(string id)
    {
        var formula = Formulas.All.Single(f => f.Id == id);
        var answered = 0;
        Inputs(formula).Sample(
            values =>
            {
                var given = formula.Inputs.Zip(values).ToDictionary(p => p.First.Name, p => p.Second);
                var sheet = new WorkingSheet();
                var silent = formula.Calculate(given);
                var shown = formula.Calculate(given, sheet);
                if (!silent.IsGiven)
                {
                    return !shown.IsGiven && sheet.Lines.Count == 0;
                }

                Interlocked.Increment(ref answered);
                var line = sheet.Lines.Single();
                return BitConverter.DoubleToInt64Bits(silent.Value) == BitConverter.DoubleToInt64Bits(shown.Value)
                    && line.Result == silent.Value
                    && line.Inputs.Zip(values).All(p => p.First.Value is { } echoed && Math.Abs(echoed - p.Second) <= 1e-9 * Math.Max(1, Math.Abs(p.Second)));
            },
            iter: 300,
            print: values => $"{id}: {string.Join(", ", formula.Inputs.Zip(values).Select(p => $"{p.First.Name} = {p.Second:R} {p.First.Unit}"))}");
        Assert.NotEqual(0, answered);
    }

    // Within the published range where one is printed, otherwise from nothing to a thousand, in hundredths as a reader would type them.
    private static Gen<double[]> Inputs(IFormula formula) => All([.. formula.Inputs.Select(s =>
        Gen.Double[s.Min ?? 0, s.Max ?? Math.Max(1000, s.Min ?? 0)].Select(v => Math.Clamp(Math.Round(v, 2), s.Min ?? 0, s.Max ?? double.MaxValue)))]);

    private static Gen<double[]> All(Gen<double>[] parts) => parts.Aggregate(
        Gen.Const(Array.Empty<double>()),
        (whole, part) => Gen.Select(whole, part, (done, next) => (double[])[.. done, next]));
}
