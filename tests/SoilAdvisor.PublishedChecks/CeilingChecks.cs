using System.Globalization;
using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.PublishedChecks;

public sealed class CeilingChecks
{
    public static TheoryData<PublishedExample> Examples => PublishedExamples.Of("ceilings");

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_value_reaches_the_printed_limits_of_law_and_no_others(PublishedExample example)
    {
        var given = example.GivenAs<CeilingGiven>();
        var expected = example.ExpectedAs<ReachedLimits>();
        var guide = TablesUnderTest.Current.Guides[given.Guide];
        Assert.NotEmpty(given.Values);

        foreach (var value in given.Values)
        {
            var findings = guide.CeilingsFor(given.Test(value).Test);

            var reached = findings.Where(f => f.State == FindingState.Act).Select(f => f.Ceiling.Limit).Order();
            Assert.NotEmpty(findings);
            Assert.True(reached.SequenceEqual(expected.Reached.Order()), example.Explain(string.Create(CultureInfo.InvariantCulture, $"{value} reaches {string.Join(", ", reached)}")));
            Assert.All(findings, f => Assert.Equal(Evidence.Seen, f.Source.Evidence));
        }
    }

    private sealed record ReachedLimits(decimal[] Reached);

    private sealed record CeilingGiven : PrintedReading
    {
        public required string Guide { get; init; }

        public required decimal[] Values { get; init; }
    }
}
