using System.Globalization;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.PublishedChecks;

public sealed class FormulaChecks
{
    [Theory]
    [MemberData(nameof(PublishedExamples.OfFormulas), MemberType = typeof(PublishedExamples))]
    public void A_formula_gives_the_printed_answer(PublishedExample example)
    {
        var formula = Formulas.All.SingleOrDefault(f => f.Id == example.Formula);
        Assert.True(formula is not null, $"{example}: the catalogue has no formula {example.Formula}.");
        var given = example.GivenAs<FormulaGiven>();
        var expected = example.ExpectedAs<PrintedNumber>();
        var working = new WorkingSheet();

        var answer = formula.Calculate(given.Symbols, working);

        Assert.True(answer.IsGiven, answer.IsGiven ? null : example.Explain($"refused: {answer.Reason.Message} {answer.Reason.Suggestion}"));
        Assert.True(formula.Result.Unit == expected.Unit, example.Explain($"{answer.Value.ToString(CultureInfo.InvariantCulture)} {formula.Result.Unit}"));
        example.AgreesWith(expected.Value, answer.Value, WorkingText.Of(working));
    }

    private sealed record FormulaGiven(Dictionary<string, double> Symbols);
}
