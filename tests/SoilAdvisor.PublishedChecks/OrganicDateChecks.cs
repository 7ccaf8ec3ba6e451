using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.Crops;

namespace SoilAdvisor.PublishedChecks;

public sealed class OrganicDateChecks
{
    public static TheoryData<PublishedExample> Examples => PublishedExamples.Of("organic-dates");

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_raw_manure_interval_is_counted_as_the_regulation_words_it(PublishedExample example)
    {
        var given = example.GivenAs<IntervalGiven>();
        var expected = example.ExpectedAs<Interval>();
        var planting = new Planting(TablesUnderTest.Current.Crop(given.Crop).Value, null, given.FirstHarvest, null, null, given.SoilContact);

        var got = new Interval(RawManureInterval.EarliestHarvest(given.Incorporated, planting), RawManureInterval.IsMet(given.Incorporated, planting));

        Assert.True(got == expected, example.Explain(got));
    }

    private sealed record IntervalGiven(string Crop, DateOnly Incorporated, DateOnly? FirstHarvest, SoilContact SoilContact);

    private sealed record Interval(DateOnly EarliestHarvest, bool? Met);
}
