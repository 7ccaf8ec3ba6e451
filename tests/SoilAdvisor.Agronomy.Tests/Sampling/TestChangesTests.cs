using SoilAdvisor.Agronomy.Sampling;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Tests.Certainty;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Sampling;

public sealed class TestChangesTests
{
    private static readonly Confidence NinetyFive = Confidence.FromPercent(95);

    // Worked by hand: CV 10 %. √(14.0² + 16.5²) = 21.6; 1.96 × 21.6 = 42.4; the difference of 25 is 1.16 standard deviations.
    [Fact]
    public void Potassium_from_140_to_165_is_not_a_proved_change()
    {
        var change = Compared(TestPair.Test(140), TestPair.Test(165, "2026-10-20"));

        Assert.Equal(25, change.Difference);
        Assert.Equal(21.6, change.Deviation, 1);
        Assert.Equal(42.4, change.SmallestProvable, 1);
        Assert.False(change.IsProved);
        Assert.Equal("K went from 140 to 165 mg/kg, which chance alone can do: at 95 % only a change of 42.4 mg/kg or more is real.", change.Words);
    }

    // √(14.0² + 18.8²) = 23.44, times 1.96 is 45.9: 48 is more. √(14² + 18.5²) = 23.20, 45.5: 45 is less.
    [Theory]
    [InlineData(188, true)]
    [InlineData(185, false)]
    public void A_change_is_proved_from_the_smallest_provable_on(int after, bool expected) =>
        Assert.Equal(expected, Compared(TestPair.Test(140), TestPair.Test(after, "2026-10-20")).IsProved);

    // √(20² + 10²) = 22.36, times 1.96 is 43.8: a fall of 100.
    [Fact]
    public void A_fall_is_called_a_fall() =>
        Assert.Equal("K went from 200 to 100 mg/kg, a real fall at 95 %: chance explains less than 43.8 mg/kg.", Compared(TestPair.Test(200), TestPair.Test(100, "2026-10-20")).Words);

    // √(0.1² + 0.1²) × 1.96 = 0.277.
    [Theory]
    [InlineData("6.5", false)]
    [InlineData("6.6", true)]
    public void A_ph_must_move_by_more_than_a_quarter_of_a_unit(string after, bool expected)
    {
        var change = Compared(TestPair.Test(6.3m, analyte: Analyte.Ph), TestPair.Test(decimal.Parse(after, System.Globalization.CultureInfo.InvariantCulture), "2026-10-20", analyte: Analyte.Ph), Analyte.Ph);

        Assert.Equal(expected, change.IsProved);
        Assert.Equal(0.277, change.SmallestProvable, 3);
    }

    [Fact]
    public void Two_methods_are_two_tests()
    {
        var refused = TestChanges.Of(TestPair.Test(140), TestPair.Test(165, extractant: Extractant.AmmoniumAcetate), Analyte.K, InventedSpread.All, NinetyFive).Reason;

        Assert.Equal("methods-differ", refused.Code);
        Assert.Contains("mehlich-3 and then by ammonium-acetate", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_depths_are_two_layers() =>
        Assert.Equal("depths-differ", TestChanges.Of(TestPair.Test(140), TestPair.Test(165, depth: 8), Analyte.K, InventedSpread.All, NinetyFive).Reason.Code);

    // Phosphorus: √(10² + 20²) = 22.36 % each. √((0.2236 × 40)² + (0.2236 × 60)²) = 16.12, times 1.96 is 31.6.
    [Fact]
    public void Another_laboratory_widens_the_answer_and_is_said()
    {
        var change = Compared(TestPair.Test(40, analyte: Analyte.P), TestPair.Test(60, "2026-10-01", "Second Laboratory", analyte: Analyte.P), Analyte.P);

        Assert.Equal(31.6, change.SmallestProvable, 1);
        Assert.Contains(change.Assumptions, a => a.Code == "laboratories-differ-spread");
    }

    [Fact]
    public void Another_laboratory_without_a_known_difference_is_refused() =>
        Assert.Equal("laboratories-differ", TestChanges.Of(TestPair.Test(140), TestPair.Test(165, lab: "Second Laboratory"), Analyte.K, InventedSpread.All, NinetyFive).Reason.Code);

    [Theory]
    [InlineData("2026-11-24", false)]
    [InlineData("2026-11-25", true)]
    [InlineData("2026-05-20", true)]
    [InlineData("2027-09-01", false)]
    public void Another_season_is_said_with_what_it_may_do(string sampled, bool said)
    {
        // 10 October and 24 November are 45 days apart in the year.
        var season = Compared(TestPair.Test(140), TestPair.Test(165, sampled)).Assumptions.SingleOrDefault(a => a.Code == "season-differs");

        Assert.Equal(said, season is not null);
        Assert.True(!said || season!.Text.Contains("may move K by 10 to 25 mg/kg", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_not_stated_is_taken_and_said()
    {
        var bare = TestPair.Test(140, lab: null, depth: null) with { Sampled = null };

        Assert.Equal(
            ["composite-spread", "same-laboratory-taken", "same-depth-taken", "same-season-taken"],
            Compared(bare, bare).Assumptions.Select(a => a.Code));
    }

    [Fact]
    public void A_change_from_less_than_is_not_judged()
    {
        var below = TestPair.Of(new Reading(Analyte.K, Amount.Below(20), ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Mehlich3), "x"));

        Assert.Equal("two-numbers-needed", TestChanges.Of(below, TestPair.Test(40), Analyte.K, InventedSpread.All, NinetyFive).Reason.Code);
    }

    // 280 lb/acre is 140 mg/kg.
    [Fact]
    public void Two_units_of_one_test_are_compared_in_the_first()
    {
        var pounds = TestPair.Of(new Reading(Analyte.K, Amount.Measured(280), ReportingUnit.PoundsPerAcre, Method.Extracted(Extractant.Mehlich3), "x"), "2026-10-01");

        Assert.Equal(0, Compared(TestPair.Test(140), pounds).Difference);
    }

    [Fact]
    public void Working_changes_nothing()
    {
        var sheet = new WorkingSheet();

        var with = TestChanges.Of(TestPair.Test(140), TestPair.Test(165), Analyte.K, InventedSpread.All, NinetyFive, sheet).Value;

        Assert.Equal(["standard-score", "deviation-of-result", "deviation-of-result", "deviation-of-difference", "smallest-provable-change"], sheet.Lines.Select(l => l.Formula));
        Assert.Equal(Compared(TestPair.Test(140), TestPair.Test(165)).SmallestProvable, with.SmallestProvable);
    }

    private static TestChange Compared(SoilTest before, SoilTest after, Analyte analyte = Analyte.K) =>
        TestChanges.Of(before, after, analyte, InventedSpread.All, NinetyFive).Value;
}
