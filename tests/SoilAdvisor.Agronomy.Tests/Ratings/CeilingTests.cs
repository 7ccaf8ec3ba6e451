using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Ratings;

public sealed class CeilingTests
{
    [Theory]
    [InlineData("149.9", true, FindingState.Pass)]
    [InlineData("150", true, FindingState.Act)]
    [InlineData("150", false, FindingState.Pass)]
    [InlineData("150.1", false, FindingState.Act)]
    public void A_limit_of_law_is_reached_on_its_own_side(string value, bool included, FindingState expected) =>
        Assert.Equal(expected, Assert.Single(Found(Amount.Measured(Number(value)), included)).State);

    [Fact]
    public void An_open_result_decides_only_on_the_side_it_is_known_to_lie()
    {
        Assert.Equal(FindingState.Pass, Assert.Single(Found(Amount.Below(150), true)).State);
        Assert.Equal(FindingState.NotDecidable, Assert.Single(Found(Amount.Below(151), true)).State);
        Assert.Equal(FindingState.Act, Assert.Single(Found(Amount.Above(150), false)).State);
        Assert.Equal(FindingState.NotDecidable, Assert.Single(Found(Amount.Above(149), true)).State);
    }

    [Fact]
    public void It_says_what_is_asked_and_that_the_authority_decides()
    {
        var message = Assert.Single(Found(Amount.Measured(200), true)).Message;

        Assert.Contains("P 200 mg/kg; Nowhere sets a limit at 150 mg/kg (all farms)", message, StringComparison.Ordinal);
        Assert.Contains("It is reached: spread no more than the crop removes.", message, StringComparison.Ordinal);
        Assert.Contains("its rule decides", message, StringComparison.Ordinal);
    }

    [Fact]
    public void It_changes_no_class_and_passes_over_another_extractant()
    {
        var guide = Guide(true);
        var high = InventedGuide.Phosphorus(Amount.Measured(60), Detection.Icp);
        var olsen = InventedGuide.Phosphorus(Amount.Measured(900), Detection.Icp, Extractant.Olsen);

        Assert.Equal("Optimum", guide.Rate(InventedGuide.Test(high), high, default).Value.Class.Name);
        Assert.Empty(guide.CeilingsFor(InventedGuide.Test(olsen)));
    }

    private static IReadOnlyList<CeilingFinding> Found(Amount amount, bool included) => Guide(included).CeilingsFor(InventedGuide.Test(InventedGuide.Phosphorus(amount)));

    private static Guide Guide(bool included) => InventedGuide.Bins with
    {
        Ceilings =
        [
            new GuideCeiling(
                Analyte.P, null, new ScaleMethod(Extractant.Mehlich3, ScaleDetection.Icp, null), ReportingUnit.MilligramsPerKilogram, 150, included, "Nowhere",
                "spread no more than the crop removes", "all farms", new Citation("invented", null, Evidence.Ours)),
        ],
    };

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
