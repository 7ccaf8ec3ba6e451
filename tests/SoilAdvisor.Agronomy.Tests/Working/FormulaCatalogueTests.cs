using CsCheck;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Working;

public sealed class FormulaCatalogueTests
{
    public static TheoryData<string> Ids => [.. Formulas.All.Select(f => f.Id)];

    [Fact]
    public void Every_id_is_there_once_and_kebab_case()
    {
        Assert.Equal(Formulas.All.Count, Formulas.All.Select(f => f.Id).Distinct().Count());
        Assert.All(Formulas.All, f => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", f.Id));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_symbol_stands_in_the_equation_with_its_meaning(string id)
    {
        var formula = Find(id);

        Assert.All(formula.Inputs, s => Assert.Contains(s.Name, formula.Shown, StringComparison.Ordinal));
        Assert.StartsWith(formula.Result.Name + " =", formula.Shown, StringComparison.Ordinal);
        Assert.All(formula.Inputs, s => Assert.NotEqual("", s.Meaning));
        Assert.NotEqual("", formula.Source.SourceId);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Working_gives_the_same_bits_and_gives_back_the_numbers_that_went_in(string id)
    {
        var formula = Find(id);
        Inputs(formula).Sample(numbers =>
        {
            var given = formula.Inputs.Zip(numbers, (s, n) => (s.Name, n)).ToDictionary(p => p.Name, p => p.n);
            var sheet = new WorkingSheet();

            var silent = formula.Calculate(given);
            var shown = formula.Calculate(given, sheet);

            Assert.Equal(silent.IsGiven, shown.IsGiven);
            if (silent.IsGiven)
            {
                var line = Assert.Single(sheet.Lines);
                Assert.Equal(BitConverter.DoubleToInt64Bits(silent.Value), BitConverter.DoubleToInt64Bits(shown.Value));
                Assert.Equal(BitConverter.DoubleToInt64Bits(silent.Value), BitConverter.DoubleToInt64Bits(line.Result!.Value));
                Assert.All(line.Inputs, i => Assert.InRange(i.Value!.Value, given[i.Symbol] - (1e-9 * Math.Max(1, Math.Abs(given[i.Symbol]))), given[i.Symbol] + (1e-9 * Math.Max(1, Math.Abs(given[i.Symbol])))));
            }
        });
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_number_outside_its_limits_is_refused_with_the_limits(string id)
    {
        var formula = Find(id);
        foreach (var symbol in formula.Inputs.Where(s => s.Min is not null))
        {
            var given = formula.Inputs.ToDictionary(s => s.Name, s => s.Min ?? 1);
            given[symbol.Name] = symbol.Min!.Value - 0.01;

            var refused = formula.Calculate(given).Reason;

            Assert.Equal("formula-inputs", refused.Code);
            Assert.Contains($"{symbol.Name} is ", refused.Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_number_far_too_large_is_refused_and_never_fails(string id)
    {
        var formula = Find(id);
        var given = formula.Inputs.ToDictionary(s => s.Name, s => s.Max ?? double.MaxValue);

        var answer = formula.Calculate(given);

        Assert.True(answer.IsGiven ? double.IsFinite(answer.Value) : answer.Reason.Code is "formula-no-result");
    }

    private static IFormula Find(string id) => Formulas.All.Single(f => f.Id == id);

    private static Gen<double[]> Inputs(IFormula formula) => Gen.Double[0, 1].Array[formula.Inputs.Count].Select(parts =>
        parts.Select((part, i) =>
        {
            var low = formula.Inputs[i].Min ?? 0;
            var high = formula.Inputs[i].Max ?? low + 1000;
            return low + (part * (high - low));
        }).ToArray());
}
