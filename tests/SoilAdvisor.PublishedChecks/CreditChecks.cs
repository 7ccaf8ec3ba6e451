using System.Globalization;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.PublishedChecks;

public sealed class CreditChecks
{
    public static TheoryData<PublishedExample> Examples => PublishedExamples.Of("credits");

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_printed_credit_stands_in_the_rate_table(PublishedExample example)
    {
        var given = example.GivenAs<CreditGiven>();
        var expected = example.ExpectedAs<PrintedRange>();

        var row = TablesUnderTest.Current.RateTables[given.RateTable].Credits.FirstOrDefault(c => c.Kind == given.Kind && c.What == given.What);

        if (row is null)
        {
            Assert.Fail(example.Explain("no such row"));
        }

        var line = string.Create(CultureInfo.InvariantCulture, $"row: {row.PrintedLow} to {row.PrintedHigh ?? row.PrintedLow} {row.Unit}, {row.Source.Evidence}");
        Assert.True(row.Unit == expected.Unit && row.Source.Evidence == Evidence.Seen, example.Explain(line));
        example.AgreesWith(expected.Low, (double)row.PrintedLow, line);
        example.AgreesWith(expected.High ?? expected.Low, (double)(row.PrintedHigh ?? row.PrintedLow), line);
    }

    private sealed record CreditGiven(string RateTable, string Kind, string What);
}
