using CsCheck;
using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Sampling;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Tests.Certainty;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Sampling;

public sealed class CoresTests
{
    // Worked by hand: n = (z × CV / E)², rounded up, with z 1.282, 1.645, 1.960. For example 90 %, CV 60, E 10: (1.645 × 6)² = 97.4, 98 cores.
    [Theory]
    [InlineData(80, 20, 7, 3, 2, 2)]
    [InlineData(80, 40, 27, 12, 7, 5)]
    [InlineData(80, 60, 60, 27, 15, 10)]
    [InlineData(90, 20, 11, 5, 3, 2)]
    [InlineData(90, 40, 44, 20, 11, 7)]
    [InlineData(90, 60, 98, 44, 25, 16)]
    [InlineData(95, 20, 16, 7, 4, 3)]
    [InlineData(95, 50, 97, 43, 25, 16)]
    [InlineData(95, 60, 139, 62, 35, 23)]
    public void Cores_for_10_15_20_and_25_percent_agree_with_the_table_worked_by_hand(int confidence, int spread, int ten, int fifteen, int twenty, int twentyFive) =>
        Assert.Equal([ten, fifteen, twenty, twentyFive], new[] { 10, 15, 20, 25 }.Select(e => Count(confidence, spread, e).IfSpreadIsKnown));

    // Worked by hand: E = 1.96 × 50 / √20 = 21.9 %.
    [Fact]
    public void Twenty_cores_in_a_field_of_50_percent_come_within_22_percent() =>
        Assert.Equal(21.9, Cores.Reached(Spread(50), 20, Confidence.FromPercent(95)).Reached.Percent, 1);

    // Table of the normal distribution as printed: 1.282, 1.645, 1.960.
    [Theory]
    [InlineData(80, 1.282)]
    [InlineData(90, 1.645)]
    [InlineData(95, 1.960)]
    [InlineData(99, 2.576)]
    public void The_standard_score_is_the_printed_one(int confidence, double printed) =>
        Assert.Equal(printed, SamplingFormulas.StandardScore.Of(Confidence.FromPercent(confidence)).Value, 0.0005);

    /// <summary>
    /// Upper critical values of Student's t as printed in the NIST/SEMATECH e-Handbook of Statistical Methods (a stored copy of the table was read).
    /// CV = E, so that n is the smallest number from 2 with n ≥ t²: each row shows t² for the number and for the one below it.
    /// </summary>
    [Theory]
    // 90 %: t(2) = 2.920, squared 8.5 > 3; t(3) = 2.353, squared 5.5 > 4; t(4) = 2.132, squared 4.5 <= 5.
    [InlineData(90, 20, 20, 5)]
    // 95 %: t(5) = 2.571, squared 6.61 > 6; t(6) = 2.447, squared 5.99 <= 7.
    [InlineData(95, 20, 20, 7)]
    // 80 %: t(2) = 1.886, squared 3.56 > 3; t(3) = 1.638, squared 2.68 <= 4.
    [InlineData(80, 20, 20, 4)]
    // 95 %, CV twice E: t(17) = 2.110, 4 t² = 17.81 <= 18; t(16) = 2.120, 4 t² = 17.98 > 17.
    [InlineData(95, 40, 20, 18)]
    // 90 %, CV twice E: t(12) = 1.782, 4 t² = 12.70 <= 13; t(11) = 1.796, 4 t² = 12.90 > 12.
    [InlineData(90, 40, 20, 13)]
    public void Few_cores_are_counted_by_students_t_as_printed(int confidence, int spread, int precision, int expected) =>
        Assert.Equal(expected, Count(confidence, spread, precision).Cores);

    [Fact]
    public void Students_t_never_asks_for_fewer_cores_and_reaches_the_precision() =>
        Gen.Select(Gen.Int[50, 99], Gen.Int[1, 200], Gen.Int[5, 60]).Sample((confidence, spread, precision) =>
        {
            var count = Count(confidence, spread, precision);
            Assert.True(count.Cores >= count.IfSpreadIsKnown && count.Cores >= 2);
            Assert.True(Cores.Reached(Spread(spread), count.IfSpreadIsKnown, Confidence.FromPercent(confidence)).Reached.Percent <= precision + 1e-6);
        });

    [Fact]
    public void A_published_field_spread_is_cited_and_a_missing_one_is_asked_for()
    {
        Assert.Equal(60, Cores.PublishedSpread(InventedSpread.All, Analyte.P, Extractant.Mehlich3).Value.Value.Percent, 12);

        var refused = Cores.PublishedSpread(InventedSpread.All, Analyte.K, null).Reason;

        Assert.Equal("field-spread-not-known", refused.Code);
        Assert.Contains("Give the coefficient of variation", refused.Suggestion, StringComparison.Ordinal);
    }

    // D = 1.96 × 1.414 × 10 = 27.7 %.
    [Fact]
    public void The_smallest_provable_change_is_2_77_times_the_spread() =>
        Assert.Equal(27.7, SamplingFormulas.SmallestProvableShare.Of((new Coefficient(1.96), CoefficientOfVariation.FromPercent(10))).Percent, 1);

    [Fact]
    public void Working_shows_each_step()
    {
        var sheet = new WorkingSheet();

        Cores.For(Spread(40), Precision.FromPercent(20), Confidence.FromPercent(90), sheet);

        Assert.Equal(["standard-score", "cores-for-precision", "cores-for-precision-student"], sheet.Lines.Select(l => l.Formula));
        Assert.Equal(11, sheet.Lines[1].Result);
    }

    private static CoreCount Count(int confidence, int spread, int precision) => Cores.For(Spread(spread), Precision.FromPercent(precision), Confidence.FromPercent(confidence));

    private static FieldSpread Spread(double percent) => Cores.GivenSpread(CoefficientOfVariation.FromPercent(percent));
}
