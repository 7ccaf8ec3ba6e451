using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.PublishedChecks;

public sealed class CationChecks
{
    public static TheoryData<PublishedExample> Examples => PublishedExamples.Of("cations");

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_sum_of_cations_is_as_printed(PublishedExample example)
    {
        var given = example.GivenAs<CationsGiven>();
        var expected = example.ExpectedAs<PrintedNumber>();
        var rules = TablesUnderTest.Current.Cations;
        var readings = given.Readings.Select(ReadingOf).ToList();
        var test = new SoilTest("published", null, null, null, null, null, null, readings, []);
        var working = new WorkingSheet();

        var answer = CationCalculation.For(test, rules, rules.Weights.Single(w => w.Id == given.Weights), working);

        Assert.True(answer.IsGiven, answer.IsGiven ? null : example.Explain($"refused: {answer.Reason.Message}"));
        example.AgreesWith(expected.Value, Find(answer.Value, given.What, expected.Unit), WorkingText.Of(working));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_published_report_raises_no_doubt(PublishedExample example)
    {
        var test = new SoilTest("published", null, null, null, null, null, null, [.. example.GivenAs<CationsGiven>().Readings.Select(ReadingOf)], []);

        Assert.Equal([], SoilTestSuspicions.Of(test, TablesUnderTest.Current.Cations).Select(s => s.Code));
    }

    private static double Find(CationBalance balance, string what, string unit) => (what, unit) switch
    {
        ("bases", _) when unit == balance.Unit => balance.Bases,
        ("capacity", _) when unit == balance.Unit => balance.Capacity,
        ("acidity", _) when unit == balance.Unit => balance.Acidity.Milliequivalents,
        ("base saturation", "%") => balance.BaseSaturation.Percent,
        (_, "%") => balance.Cations.Single(c => Words.Analytes.IdOf(c.Cation) == what).Saturation.Percent,
        _ when unit == balance.Unit => balance.Cations.Single(c => Words.Analytes.IdOf(c.Cation) == what).Milliequivalents,
        _ => throw new InvalidOperationException($"{what} in {unit} is not part of a balance in {balance.Unit}."),
    };

    private static Reading ReadingOf(ReadingGiven given)
    {
        var analyte = Words.Analytes.Read(given.Analyte).Value;
        var method = given.Extractant is null
            ? Method.By(given.Method is null ? null : Words.ProceduresOf(analyte)!.Read(given.Method).Value)
            : Method.Extracted(Words.Extractants.Read(given.Extractant).Value);
        return new Reading(analyte, Amount.Measured(given.Value), Words.Units.Read(given.Unit).Value, method, given.Analyte);
    }

    private sealed record CationsGiven(string Weights, string What, ReadingGiven[] Readings);

    private sealed record ReadingGiven(string Analyte, decimal Value, string Unit, string? Extractant = null, string? Method = null);
}
