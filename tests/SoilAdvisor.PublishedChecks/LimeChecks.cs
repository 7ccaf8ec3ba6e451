using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.PublishedChecks;

public sealed class LimeChecks
{
    public static TheoryData<PublishedExample> Examples => PublishedExamples.Of("lime");

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_lime_requirement_agrees_with_the_printed_answer(PublishedExample example)
    {
        var given = example.GivenAs<LimeGiven>();
        var expected = example.ExpectedAs<PrintedNumber>();
        var methods = TablesUnderTest.Current.LimeMethods;
        var working = new WorkingSheet();
        var target = new TargetPh(given.TargetPh, null, null, Citation.OurJudgement);

        var answer = LimeRequirementCalculation.For(given.Test(), target, methods.Values, methods[given.Method], null, [], working);

        Assert.True(answer.IsGiven, answer.IsGiven ? null : example.Explain($"refused: {answer.Reason.Message} {answer.Reason.Suggestion}"));
        // No lime is no lime in any unit.
        Assert.True(expected.Value == 0 || answer.Value.PrintedUnit == expected.Unit, example.Explain($"{answer.Value.PrintedValue} {answer.Value.PrintedUnit}", WorkingText.Of(working)));
        example.AgreesWith(expected.Value, (double)answer.Value.PrintedValue, WorkingText.Of(working));
        Assert.Equal((double)answer.Value.PrintedValue * (answer.Value.PrintedUnit == "ton/acre" ? 2000 : 1), answer.Value.Rate.PoundsPerAcre, 6);
    }

    private sealed record LimeGiven(string Method, string Buffer, decimal BufferPh, decimal SoilPh, decimal TargetPh, decimal? Acidity = null)
    {
        public SoilTest Test()
        {
            List<Reading> readings =
            [
                new(Analyte.Ph, Amount.Measured(SoilPh), ReportingUnit.PhUnits, Agronomy.SoilTests.Method.By(Procedure.PhWater11), "published example"),
                new(Analyte.BufferPh, Amount.Measured(BufferPh), ReportingUnit.PhUnits, Agronomy.SoilTests.Method.By(Words.ProceduresOf(Analyte.BufferPh)!.Read(Buffer).Value), "published example"),
            ];
            if (Acidity is { } acidity)
            {
                readings.Add(new(Analyte.Acidity, Amount.Measured(acidity), ReportingUnit.MilliequivalentsPer100Grams, Agronomy.SoilTests.Method.By(null), "published example"));
            }

            return new SoilTest("published", null, null, null, null, null, null, readings, []);
        }
    }
}
