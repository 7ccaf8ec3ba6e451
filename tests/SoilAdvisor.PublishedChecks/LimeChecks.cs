using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Quantities;
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

        var answer = LimeRequirementCalculation.For(given.Test(), target, methods.Values, methods[given.Method], null, [], working, given.Recent?.Lime());

        Assert.True(answer.IsGiven, answer.IsGiven ? null : example.Explain($"refused: {answer.Reason.Message} {answer.Reason.Suggestion}"));
        // No lime is no lime in any unit.
        Assert.True(expected.Value == 0 || answer.Value.PrintedUnit == expected.Unit, example.Explain($"{answer.Value.PrintedValue} {answer.Value.PrintedUnit}", WorkingText.Of(working)));
        example.AgreesWith(expected.Value, (double)answer.Value.PrintedValue, WorkingText.Of(working));
        var counted = methods[given.Method].Basis.Of(methods[given.Method].One * (double)answer.Value.PrintedValue);
        Assert.Equal(counted.AsPureLime.PoundsPerAcre, answer.Value.Rate.PoundsPerAcre, 6);
    }

    private sealed record LimeGiven(string Method, string Buffer, decimal BufferPh, decimal SoilPh, decimal TargetPh, decimal? Acidity = null, decimal? Capacity = null, RecentGiven? Recent = null)
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

            if (Capacity is { } capacity)
            {
                readings.Add(new(Analyte.LimeBufferCapacity, Amount.Measured(capacity), ReportingUnit.MilligramsPerKilogramAndPh, Agronomy.SoilTests.Method.By(Procedure.CapacityThirtyMinutes), "published example"));
            }

            return new SoilTest("published", Recent?.Sampled, null, null, null, null, null, readings, []);
        }
    }

    private sealed record RecentGiven(DateOnly Spread, DateOnly Sampled, double Tons)
    {
        public RecentLime Lime() => new(MassPerArea.FromPoundsPerAcre(Tons * 2000), Spread, HumicSoilClass.Mineral);
    }
}
