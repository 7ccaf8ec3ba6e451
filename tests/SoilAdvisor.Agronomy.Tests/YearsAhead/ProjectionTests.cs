using CsCheck;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.YearsAhead;

namespace SoilAdvisor.Agronomy.Tests.YearsAhead;

public sealed class ProjectionTests
{
    [Fact]
    public void A_corn_crop_without_phosphate_lowers_the_test_by_the_published_three_ppm_a_year()
    {
        // Ohio State column of 2012: 150 bu take 55 lb P2O5, at 20 lb for one ppm "approximately 3".
        var projection = InventedYears.Projected(40, 0, 55, years: 4);
        Assert.Equal(-2.75, projection.Pace.Likely.Value, 12);
        Assert.Equal([40, 37.25, 34.5, 31.75, 29], projection.Years.Select(y => y.Likely.MilligramsPerKilogram));
    }

    [Fact]
    public void Where_spread_and_harvest_are_equal_the_test_stays_and_only_its_own_spread_makes_the_band()
    {
        var projection = InventedYears.Projected(30, 55, 55);
        Assert.True(projection.IsFlat);
        Assert.All(projection.Years, y =>
        {
            Assert.Equal(30, y.Likely.MilligramsPerKilogram, 12);
            Assert.Equal(projection.Years[0].Low, y.Low);
            Assert.Equal(projection.Years[0].High, y.High);
        });

        // Four in five of a lognormal with a spread of 10 %: exp(1.2816 × √ln(1.01)) = 1.1364.
        Assert.Equal(30 / 1.1364, projection.Years[0].Low.MilligramsPerKilogram, 0.005);
        Assert.Equal(30 * 1.1364, projection.Years[0].High.MilligramsPerKilogram, 0.005);
    }

    [Fact]
    public void More_harvest_means_a_faster_fall_and_more_spread_a_faster_climb() =>
        Gen.Select(Gen.Double[1, 200], Gen.Double[0, 300], Gen.Double[0, 200], Gen.Double[0.1, 50]).Sample((level, applied, removed, more) =>
        {
            var before = InventedYears.Projected(level, applied, removed).Pace.Likely.Value;
            Assert.True(InventedYears.Projected(level, applied, removed + more).Pace.Likely.Value < before);
            Assert.True(InventedYears.Projected(level, applied + more, removed).Pace.Likely.Value > before);
        });

    [Fact]
    public void The_band_holds_the_projection_and_never_narrows_with_the_years() =>
        Gen.Select(Gen.Double[0, 200], Gen.Double[0, 300], Gen.Double[0, 200], Gen.Double[0, 60], Gen.Double[1, 4]).Sample((level, applied, removed, spread, band) =>
        {
            var years = InventedYears.Projected(level, applied, removed, 20, spread, band).Years;
            foreach (var (before, after) in years.Zip(years.Skip(1)))
            {
                Assert.True(after.Low.MilligramsPerKilogram <= after.Likely.MilligramsPerKilogram && after.Likely.MilligramsPerKilogram <= after.High.MilligramsPerKilogram);
                Assert.True(after.Likely.MilligramsPerKilogram == 0 || after.High.MilligramsPerKilogram - after.Likely.MilligramsPerKilogram >= before.High.MilligramsPerKilogram - before.Likely.MilligramsPerKilogram - 1e-9);
            }
        });

    // The band against a simulation with draws of its own: test and pounds lognormal and independent. Two independent
    // errors that add as squares are exact for normal ones; for these the ends agree to 3 % of the projection.
    [Theory]
    [InlineData(30, 75, 55, 5, 10, 1.5)]
    [InlineData(30, 275, 55, 5, 10, 1.5)]
    [InlineData(180, 0, 55, 20, 10, 1.5)]
    [InlineData(60, 150, 40, 10, 20, 2)]
    public void A_simulation_finds_the_same_band(double level, double applied, double removed, int years, double spread, double band)
    {
        var end = InventedYears.Projected(level, applied, removed, years, spread, band).Years[^1];
        var random = new Random(20261125);
        var (testDeviation, poundsDeviation) = (Math.Sqrt(Math.Log(1 + (spread * spread / 1e4))), Math.Log(band) / 1.2815515655);
        var drawn = new double[200_000];
        for (var i = 0; i < drawn.Length; i++)
        {
            var pounds = 20 * Math.Exp(poundsDeviation * Normal(random));
            drawn[i] = Math.Max((level * Math.Exp(testDeviation * Normal(random))) + (years * (applied - removed) / pounds), 0);
        }

        Array.Sort(drawn);
        var near = 0.03 * end.Likely.MilligramsPerKilogram;
        Assert.Equal(drawn[drawn.Length / 2], end.Likely.MilligramsPerKilogram, near);
        Assert.Equal(drawn[drawn.Length / 10], end.Low.MilligramsPerKilogram, near);
        Assert.Equal(drawn[drawn.Length * 9 / 10], end.High.MilligramsPerKilogram, near);
    }

    [Fact]
    public void Pounds_of_another_extractant_move_no_test()
    {
        var answer = Projections.OfPhosphorus(InventedYears.Tested(30, extractant: Extractant.Olsen), InventedYears.Moves(), InventedYears.Yearly(0, 55), 5);
        Assert.Equal("movement-of-another-extractant", answer.Reason.Code);
        Assert.Contains("olsen", answer.Reason.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    [InlineData(20, true)]
    [InlineData(21, false)]
    public void One_to_twenty_years_are_projected(int years, bool given) =>
        Assert.Equal(given, Projections.OfPhosphorus(InventedYears.Tested(30), InventedYears.Moves(), InventedYears.Yearly(0, 55), years).IsGiven);

    [Fact]
    public void What_is_spread_once_lifts_every_year_alike()
    {
        var (with, without) = (InventedYears.Projected(30, 0, 20, once: 100), InventedYears.Projected(30, 0, 20));
        Assert.All(with.Years.Zip(without.Years), pair => Assert.Equal(5, pair.First.Likely.MilligramsPerKilogram - pair.Second.Likely.MilligramsPerKilogram, 9));
    }

    [Fact]
    public void A_level_is_reached_when_the_projection_says_so_and_never_against_it()
    {
        // 18 to 30 with 60 lb left over a year: 3 mg/kg a year, 4 years; the published build-up spreads 240 lb over 4 years.
        var climbing = InventedYears.Projected(18, 115, 55);
        var up = climbing.YearsTo(Level(30));
        Assert.Equal(4, up.Likely!.Value, 12);
        Assert.True(up.Earliest < up.Likely && up.Likely < up.Latest);
        Assert.Equal(0, climbing.YearsTo(Level(18)).Likely);
        Assert.Null(climbing.YearsTo(Level(17)).Likely);

        var falling = InventedYears.Projected(180, 0, 80);
        var down = falling.YearsTo(Level(100));
        Assert.Equal(20, down.Likely!.Value, 12);
        Assert.True(down.Earliest < down.Likely && down.Likely < down.Latest);
        Assert.Null(falling.YearsTo(Level(200)).Likely);
    }

    [Fact]
    public void Analyses_that_print_a_range_widen_the_band()
    {
        var narrow = Projections.OfPhosphorus(InventedYears.Tested(30), InventedYears.Moves(), InventedYears.Yearly(100, 50), 5).Value.Years[5];
        var wide = Projections.OfPhosphorus(InventedYears.Tested(30), InventedYears.Moves(), InventedYears.Yearly(50, 50, appliedHigh: 150), 5).Value.Years[5];
        Assert.Equal(narrow.Likely.MilligramsPerKilogram, wide.Likely.MilligramsPerKilogram, 9);
        Assert.True(wide.High.MilligramsPerKilogram > narrow.High.MilligramsPerKilogram && wide.Low.MilligramsPerKilogram < narrow.Low.MilligramsPerKilogram);
    }

    private static SoilConcentration Level(double value) => SoilConcentration.FromMilligramsPerKilogram(value);

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
