using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Crops;

public sealed class QuadraticRateTests
{
    private static readonly Citation Source = new("invented", null, Evidence.Ours);

    // By hand with 0.0116 I² - 2.75 I + 150: 150; 1.16 - 27.5 + 150 = 123.66; 29 - 137.5 + 150 = 41.5; 65.25 - 206.25 + 150 = 9; its first zero lies at 85.1.
    [Theory]
    [InlineData(0, 150)]
    [InlineData(10, 123.66)]
    [InlineData(50, 41.5)]
    [InlineData(75, 9)]
    [InlineData(85, 0.06)]
    [InlineData(86, 0)]
    public void A_parabola_is_read_down_to_its_first_zero(double index, double pounds) =>
        Assert.Equal(pounds, Rate(0.0116m, 2.75m, 150).RateFor(new(index)).PoundsPerAcre, 2);

    // The same parabola is above zero again from 152 on: 0.0116 x 40000 - 550 + 150 = 64 at 200.
    [Theory]
    [InlineData(118)]
    [InlineData(152)]
    [InlineData(200)]
    public void Beyond_its_lowest_point_it_stays_at_zero(double index) =>
        Assert.Equal(0, Rate(0.0116m, 2.75m, 150).RateFor(new(index)).PoundsPerAcre);

    // 0.0175 I² - 4.46 I + 300 never reaches zero: lowest at 4.46 / 0.035 = 127.43, where it is 300 - 4.46² / 0.07 = 15.83.
    [Theory]
    [InlineData(127, 15.837)]
    [InlineData(127.43, 15.834)]
    [InlineData(300, 15.834)]
    public void One_that_never_reaches_zero_stays_at_its_lowest(double index, double pounds) =>
        Assert.Equal(pounds, Rate(0.0175m, 4.46m, 300).RateFor(new(index)).PoundsPerAcre, 2);

    [Fact]
    public void The_unit_of_the_table_is_kept()
    {
        var small = new QuadraticRate("x", 0.0012m, 0.315m, 20, "lb/1000-sq-ft", null, Source);

        Assert.Equal(20 * 43.56, small.RateFor(default).PoundsPerAcre, 6);
    }

    [Fact]
    public void Working_cites_the_coefficients()
    {
        var sheet = new WorkingSheet();

        _ = Rate(0.0116m, 2.75m, 150).RateFor(new(50), sheet);

        Assert.Equal(Origin.From(Source), Assert.Single(sheet.Lines).Inputs[0].From);
    }

    private static QuadraticRate Rate(decimal a, decimal b, decimal c) => new("x", a, b, c, "lb/acre", 10, Source);
}
