using CsCheck;
using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Tests.Quantities;

public sealed class AreaFormulaTests
{
    // By hand: 43,560 sq ft × 1 ft of soil at 62.428 lb/cu ft (1 g/cm3) is 2,719,363 lb; one millionth of a twelfth of it is 0.226613 lb.
    [Fact]
    public void One_milligram_in_a_kilogram_of_one_inch_of_water_weight_is_0_226613_pounds_an_acre() =>
        Assert.Equal(0.226613, Layer(1, 1, 1), 6);

    [Fact]
    public void Depth_and_density_and_concentration_each_count_in_proportion() =>
        Gen.Select(Gen.Double[0.1, 500], Gen.Double[0.3, 1.9], Gen.Double[0.5, 12]).Sample((c, d, depth) =>
        {
            var one = Layer(c, d, depth);
            Assert.Equal(2 * one, Layer(2 * c, d, depth), 6);
            Assert.Equal(2 * one, Layer(c, 2 * d, depth), 6);
            Assert.Equal(2 * one, Layer(c, d, 2 * depth), 6);
        });

    [Fact]
    public void A_share_comes_back_in_every_unit() => Gen.Double[-1, 100].Sample(value =>
    {
        Assert.Equal(value, MassShare.FromPercent(value).Percent, 9);
        Assert.Equal(value, MassShare.FromPoundsPerShortTon(value).PoundsPerShortTon, 9);
        Assert.Equal(value * 20, MassShare.FromPercent(value).PoundsPerShortTon, 9);
        Assert.Equal(value / 100, MassShare.FromPercent(value).Fraction, 12);
    });

    [Theory]
    [InlineData(-0.001)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_soil_concentration_or_exchange_capacity_that_cannot_be_does_not_exist(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SoilConcentration.FromMilligramsPerKilogram(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => ExchangeCapacity.FromMilliequivalentsPer100Grams(value));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    public void A_share_or_coefficient_that_is_no_number_does_not_exist(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => MassShare.FromPercent(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Coefficient(value));
    }

    private static double Layer(double concentration, double density, double depth) =>
        AreaFormulas.ConcentrationToMassPerArea.Of((SoilConcentration.FromMilligramsPerKilogram(concentration), Density.FromGramsPerCubicCentimeter(density), Length.FromInches(depth))).PoundsPerAcre;
}
