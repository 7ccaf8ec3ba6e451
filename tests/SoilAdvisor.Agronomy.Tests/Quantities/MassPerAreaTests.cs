using CsCheck;
using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace SoilAdvisor.Agronomy.Tests.Quantities;

public sealed class MassPerAreaTests
{
    // NIST SP 811: 1 lb = 0.45359237 kg and 1 acre (43,560 square international feet) = 4046.8564224 m2, both exact; the quotient is 1.12085 kg/ha.
    [Fact]
    public void One_pound_an_acre_is_1_12085_kilograms_a_hectare() =>
        Assert.Equal(0.45359237 / 0.40468564224, MassPerArea.FromPoundsPerAcre(1).KilogramsPerHectare, 12);

    [Fact]
    public void A_short_ton_an_acre_is_45_9_pounds_on_1000_square_feet() =>
        Assert.Equal(2000 / 43.56, MassPerArea.FromPoundsPerAcre(2000).PoundsPer1000SquareFeet, 10);

    [Fact]
    public void A_bed_takes_the_share_of_an_acre_that_it_covers() =>
        Assert.Equal(100 * 250 / 43560.0, MassPerArea.FromPoundsPerAcre(100).On(Area.FromSquareFeet(250)).Pounds, 6);

    [Fact]
    public void Every_unit_comes_back_as_it_went_in() => Gen.Double[-1e6, 1e6].Sample(value =>
    {
        Close(value, MassPerArea.FromPoundsPerAcre(value).PoundsPerAcre);
        Close(value, MassPerArea.FromKilogramsPerHectare(value).KilogramsPerHectare);
        Close(value, MassPerArea.FromPoundsPer1000SquareFeet(value).PoundsPer1000SquareFeet);
        Close(value, MassPerArea.FromKilogramsPerHectare(value).Per(MassUnit.Kilogram, AreaUnit.Hectare));
    });

    [Fact]
    public void What_is_spread_on_an_area_comes_back_as_the_same_rate() =>
        Gen.Select(Gen.Double[0, 1e5], Gen.Double[0.1, 1e6]).Sample((pounds, squareFeet) =>
        {
            var rate = MassPerArea.FromPoundsPerAcre(pounds);
            var area = Area.FromSquareFeet(squareFeet);
            Close(pounds, MassPerArea.Of(rate.On(area), area).PoundsPerAcre);
        });

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void A_rate_that_is_no_number_cannot_exist(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MassPerArea.FromPoundsPerAcre(value));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void An_area_that_is_not_above_zero_is_refused(double squareFeet) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MassPerArea.Of(Mass.FromPounds(1), Area.FromSquareFeet(squareFeet)));

    [Fact]
    public void A_difference_may_be_negative() =>
        Assert.Equal(-10, (MassPerArea.FromPoundsPerAcre(20) - MassPerArea.FromPoundsPerAcre(30)).PoundsPerAcre, 9);

    [Fact]
    public void A_range_with_its_ends_swapped_cannot_exist() =>
        Assert.Throws<ArgumentException>(() => new RateRange(MassPerArea.FromPoundsPerAcre(2), MassPerArea.FromPoundsPerAcre(1)));

    private static void Close(double expected, double actual) =>
        Assert.InRange(actual, expected - (1e-12 * Math.Max(1, Math.Abs(expected))), expected + (1e-12 * Math.Max(1, Math.Abs(expected))));
}
