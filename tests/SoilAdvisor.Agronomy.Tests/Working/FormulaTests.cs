using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Working;

public sealed class FormulaTests
{
    private static readonly IFormula Formula = OxideConversions.PhosphorusToPhosphate;

    [Fact]
    public void Working_shows_symbol_value_unit_origin_and_result()
    {
        var sheet = new WorkingSheet();
        sheet.Section("Bed 3: phosphorus");

        OxideConversions.PhosphorusToPhosphate.Of(Rate<P>.FromPoundsPerAcre(10), sheet, Origin.Given("line 4 of the report"));

        var line = Assert.Single(sheet.Lines);
        var input = Assert.Single(line.Inputs);
        Assert.Equal("Bed 3: phosphorus", line.Section);
        Assert.Equal(1, line.Number);
        Assert.Equal(("P", "lb/acre"), (input.Symbol, input.Unit));
        Assert.Equal(10, input.Value!.Value, 9);
        Assert.Equal(new Origin.GivenBy("line 4 of the report"), input.From);
        Assert.Equal("P2O5", line.ResultSymbol);
        Assert.Equal(22.913, line.Result!.Value, 3);
        Assert.Equal("atomic-masses", line.Source.SourceId);
    }

    [Fact]
    public void The_catalogue_takes_numbers_by_symbol()
    {
        var answer = Formula.Calculate(new Dictionary<string, double> { ["P"] = 10 });

        Assert.Equal(22.913, answer.Value, 3);
    }

    [Fact]
    public void A_missing_symbol_and_an_unknown_one_are_both_named()
    {
        var answer = Formula.Calculate(new Dictionary<string, double> { ["Q"] = 10 });

        Assert.False(answer.IsGiven);
        Assert.Equal("formula-inputs", answer.Reason.Code);
        Assert.Contains("\"Q\" is not a symbol", answer.Reason.Message, StringComparison.Ordinal);
        Assert.Contains("P (phosphorus) is missing", answer.Reason.Message, StringComparison.Ordinal);
        Assert.Contains("P (lb/acre)", answer.Reason.Suggestion, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-0.001, false)]
    [InlineData(0, true)]
    [InlineData(double.NaN, false)]
    public void A_number_outside_the_published_range_is_refused(double value, bool given) =>
        Assert.Equal(given, Formula.Calculate(new Dictionary<string, double> { ["P"] = value }).IsGiven);

    [Fact]
    public void An_answer_is_a_value_or_a_reason_and_never_both()
    {
        var given = Answer<int>.Given(4).Select(x => x * 2).Then(x => Answer<string>.Given($"{x}"));
        var refused = Answer<int>.Refused("code", "why", "what to do").Select(x => x * 2);

        Assert.Equal("8", given.Value);
        Assert.Throws<InvalidOperationException>(() => given.Reason);
        Assert.Equal(new Refusal("code", "why", "what to do"), refused.Reason);
        Assert.Throws<InvalidOperationException>(() => refused.Value);
        Assert.Throws<InvalidOperationException>(() => default(Answer<int>).Reason);
    }
}
