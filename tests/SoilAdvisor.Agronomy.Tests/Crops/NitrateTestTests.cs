using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Tests.Ratings;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Tests.Crops;

public sealed class NitrateTestTests
{
    private static readonly Crop Beet = new("beet", "Beet", null, "Family", "root", SoilContact.Contact, null, false, [], [], new Citation("invented", null, Evidence.Ours));

    // Invented: 60 lb/acre to 20 mg/kg, 30 to 25, nothing above.
    private static readonly SidedressTable Table = new(
        "beet",
        false,
        new RatingScale(
            Analyte.NitrateN, new ScaleMethod(null, ScaleDetection.Any, null), ReportingUnit.MilligramsPerKilogram, 0,
            [Span("0 to 20", 0, 20), Span("21 to 25", 21, 25), Span("26 and more", 26, null)])
        {
            Timing = SampleTiming.BeforeSidedressing,
            Depth = new SampleDepth(Length.Zero, Length.FromInches(12)),
        },
        [MassPerArea.FromPoundsPerAcre(60), MassPerArea.FromPoundsPerAcre(30), MassPerArea.FromPoundsPerAcre(0)],
        "in one go");

    [Theory]
    [InlineData("20.4", 60)]
    [InlineData("20.5", 30)]
    [InlineData("25.4", 30)]
    [InlineData("25.5", 0)]
    public void The_rate_of_the_span_is_the_advice(string nitrate, double pounds) =>
        Assert.Equal(pounds, For(Test(nitrate)).Value.Rate.PoundsPerAcre);

    [Fact]
    public void It_says_that_no_credit_is_taken_off_beside_it() =>
        Assert.Contains(For(Test("10")).Value.Assumptions, a => a.Code == "nitrate-test-in-place-of-credits");

    [Fact]
    public void A_routine_sample_is_no_nitrate_test()
    {
        var refused = For(Test("10") with { Timing = null }).Reason;

        Assert.Equal("context-not-covered", refused.Code);
        Assert.Contains("before-sidedressing", refused.Suggestion, StringComparison.Ordinal);
        Assert.False(For(Test("10") with { Depth = null }).IsGiven);
    }

    [Fact]
    public void Without_nitrate_or_a_table_it_is_refused()
    {
        Assert.Equal("not-reported", For(Test("10") with { Readings = [] }).Reason.Code);
        Assert.Equal("no-sidedress-table", NitrateTest.For(Test("10"), Beet, true, [Table]).Reason.Code);
    }

    [Fact]
    public void The_crop_and_the_manuring_are_asked_for_and_never_taken_as_read()
    {
        Assert.Equal("crop-missing", NitrateTest.For(Test("10"), null, false, [Table]).Reason.Code);
        Assert.Equal("manured-missing", NitrateTest.For(Test("10"), Beet, null, [Table]).Reason.Code);
    }

    private static Answer<SidedressAdvice> For(SoilTest test) => NitrateTest.For(test, Beet, false, [Table]);

    private static SoilTest Test(string nitrate)
    {
        var amount = Amount.Measured(decimal.Parse(nitrate, System.Globalization.CultureInfo.InvariantCulture));
        return InventedGuide.Test(new Reading(Analyte.NitrateN, amount, ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Water), "x")) with
        {
            Timing = SampleTiming.BeforeSidedressing,
            Depth = new SampleDepth(Length.Zero, Length.FromInches(12)),
        };
    }

    private static RatingClass Span(string name, decimal from, decimal? to) => InventedGuide.Class(name, Standing.Information, from, true, to, true);
}
