using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Wording;
using UnitsNet;

namespace SoilAdvisor.Reports.Tests;

public sealed class MeasuresTests
{
    private static readonly Measures Us = new(ReportUnits.Us);
    private static readonly Measures Metric = new(ReportUnits.Metric);

    // 16 oz are one pound: by definition.
    [Theory]
    [InlineData(2.5, "2 lb 8 oz")]
    [InlineData(3, "3 lb")]
    [InlineData(0.03125, "0.5 oz")]
    [InlineData(0.96, "15.4 oz")]
    [InlineData(0.97, "1 lb")]
    [InlineData(1.98, "2 lb")]
    [InlineData(0.001, "under 0.1 oz")]
    [InlineData(0, "0 oz")]
    [InlineData(99.98, "100 lb")]
    [InlineData(100.4, "100 lb")]
    [InlineData(1234.5, "1,235 lb")]
    public void Weights_are_in_pounds_and_ounces(double pounds, string expected) => Assert.Equal(expected, Us.Weight(Mass.FromPounds(pounds)));

    [Theory]
    [InlineData(0.9994, "999 g")]
    [InlineData(0.9996, "1 kg")]
    [InlineData(2.344, "2.34 kg")]
    [InlineData(0.0002, "under 1 g")]
    [InlineData(0, "0 g")]
    [InlineData(100.4, "100 kg")]
    public void Metric_weights_are_in_kilograms_and_grams(double kilograms, string expected) => Assert.Equal(expected, Metric.Weight(Mass.FromKilograms(kilograms)));

    [Theory]
    [InlineData(11.3, "cup", "11 1/4 cups")]
    [InlineData(0.25, "cup", "1/4 cup")]
    [InlineData(1, "pint", "1 pint")]
    [InlineData(0.13, "cup", "0.13 cup")]
    [InlineData(0.12, "cup", "under 1/8 cup: weigh it")]
    [InlineData(3.5, "cubic-foot", "3 1/2 cubic feet")]
    [InlineData(0.315, "cubic-foot", "0.32 cubic foot")]
    [InlineData(1.05, "pint", "1 pint")]
    [InlineData(1.06, "pint", "1.06 pints")]
    [InlineData(2.1, "cubic-yard", "2 cubic yards")]
    [InlineData(1.8, "gal", "1 3/4 gallons")]
    public void Volumes_are_in_quarters_where_that_is_within_a_twentieth(double value, string unit, string expected) => Assert.Equal(expected, Us.Scoop(new VolumeMeasure(value, unit, Citation.CommonPractice)));

    [Fact]
    public void Without_a_published_density_it_is_weighed() => Assert.Equal("weigh it", Us.Scoop(null));

    // A US gallon is 3.785411784 L by definition.
    [Fact]
    public void A_gallon_is_said_in_litres() => Assert.Equal("3.79 L", Metric.Scoop(new VolumeMeasure(1, "gal", Citation.CommonPractice)));

    // 100 lb/acre = 100 × 0.45359237 kg / 0.40468564224 ha = 112.085 kg/ha; 100 / 43.56 = 2.2957 lb on 1000 sq ft.
    [Fact]
    public void Every_rate_is_given_three_times()
    {
        Assert.Equal(["100 lb/acre", "112 kg/ha", "2.3 lb/1000 sq ft"], Us.SpreadRate(MassPerArea.FromPoundsPerAcre(100)));
        Assert.Equal(["112 kg/ha", "100 lb/acre", "2.3 lb/1000 sq ft"], Metric.SpreadRate(MassPerArea.FromPoundsPerAcre(100)));
    }

    [Fact]
    public void A_printed_rate_keeps_its_digits()
    {
        Assert.Equal("112.5 lb/acre", Us.Rate(MassPerArea.FromPoundsPerAcre(112.5)));
        Assert.Equal("100 to 150 lb/acre", Us.Range(MassPerArea.FromPoundsPerAcre(100), MassPerArea.FromPoundsPerAcre(150)));
    }

    [Fact]
    public void A_price_that_nobody_gave_is_not_zero()
    {
        Assert.Equal("no price given", Measures.Cost(null));
        Assert.Equal("1,234.50 USD", Measures.Cost(new Money(1234.5m, "USD")));
    }

    [Theory]
    [InlineData(0.0004567, "0.000457")]
    [InlineData(999.6, "1,000")]
    [InlineData(-4.483, "-4.48")]
    [InlineData(1234567, "1,230,000")]
    [InlineData(0, "0")]
    public void A_number_is_rounded_to_its_digits(double value, string expected) => Assert.Equal(expected, Figure.Short(value));
}
