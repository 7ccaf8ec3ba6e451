using CsCheck;
using SoilAdvisor.Agronomy.FieldWork;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Tests.FieldWork;

/// <summary>Rounding to what a person measures. A bucket of 10 L at 0.5 kg/L holds 5 kg, its half 2.5 kg; a scoop of 1 L holds 0.5 kg, its quarter 0.125 kg.</summary>
public sealed class MeasuringOutTests
{
    private static readonly BulkDensity HalfAKiloALitre = new(Density.FromKilogramsPerCubicMeter(500), new Citation("invented", null, Evidence.Seen));
    private static readonly FieldMeasures BucketAndScoop = FieldMeasures.Of(Volume.FromLiters(10), Volume.FromLiters(1), Mass.FromKilograms(0.1), null, null);
    private static readonly FieldMeasures BucketOnly = FieldMeasures.Of(Volume.FromLiters(10), null, Mass.FromKilograms(0.1), null, null);

    [Theory]
    [InlineData(7.5, 3, 0)]
    [InlineData(7.62, 3, 1)]
    [InlineData(2.4, 0, 19)]
    [InlineData(0.49, 0, 4)]
    public void An_amount_becomes_the_nearest_half_buckets_and_quarter_scoops(double kilograms, int halfBuckets, int quarterScoops)
    {
        var amount = Measured(kilograms, 1000, BucketAndScoop);

        Assert.Equal((MeasuringWay.ByVolume, halfBuckets, quarterScoops), (amount.How, amount.HalfBuckets, amount.QuarterScoops));
        Assert.Equal((2.5 * halfBuckets) + (0.125 * quarterScoops), amount.Measured.Kilograms, 9);
    }

    [Fact]
    public void Without_a_scoop_an_amount_far_from_half_buckets_is_weighed()
    {
        Assert.Equal(MeasuringWay.ByVolume, Measured(7.6, 1000, BucketOnly).How);
        var weighed = Measured(6.04, 1000, BucketOnly);
        Assert.Equal((MeasuringWay.ToScaleMark, 6.0), (weighed.How, Math.Round(weighed.Measured.Kilograms, 9)));
    }

    [Fact]
    public void Without_a_published_density_everything_is_weighed() =>
        Assert.Equal(MeasuringWay.ToScaleMark, MeasuringOut.For(Mass.FromKilograms(7.5), default, Mass.FromKilograms(1000), null, BucketAndScoop).How);

    [Fact]
    public void At_its_limit_an_amount_is_rounded_down_and_below_its_limit_up()
    {
        // 7.57 kg lies between 7.5 and 7.625: nearer to the upper one.
        Assert.Equal(7.625, Measured(7.57, 7.625, BucketAndScoop).Measured.Kilograms, 9);
        Assert.Equal(7.5, Measured(7.57, 7.62, BucketAndScoop).Measured.Kilograms, 9);
        Assert.Equal(7.5, Measured(7.57, 7.57, BucketAndScoop).Measured.Kilograms, 9);
    }

    [Fact]
    public void What_ties_up_nitrogen_is_not_rounded_below_its_least()
    {
        var up = MeasuringOut.For(Mass.FromKilograms(7.54), Mass.FromKilograms(7.51), Mass.FromKilograms(8), HalfAKiloALitre, BucketAndScoop);

        Assert.Equal(7.625, up.Measured.Kilograms, 9);
    }

    [Fact]
    public void An_amount_below_the_first_mark_is_weighed_exactly_where_the_mark_would_pass_its_limit()
    {
        var tiny = MeasuringOut.For(Mass.FromKilograms(0.04), default, Mass.FromKilograms(0.05), null, BucketOnly);

        Assert.Equal((MeasuringWay.Exactly, 0.04), (tiny.How, tiny.Measured.Kilograms));
    }

    [Theory]
    [InlineData(0.99, 0.1, "oz")]
    [InlineData(1.01, 1, "oz")]
    [InlineData(9.99, 1, "oz")]
    [InlineData(10.01, 4, "oz")]
    [InlineData(99.9, 4, "oz")]
    [InlineData(100.1, 16, "oz")]
    public void Usual_marks_of_a_scale_grow_with_the_weight(double pounds, double ounces, string unit)
    {
        Assert.Equal("oz", unit);
        Assert.Equal(ounces, FieldMeasures.Of(null, null, null, null, null).MarkFor(Mass.FromPounds(pounds)).Ounces, 9);
    }

    [Fact]
    public void Rounding_never_takes_an_amount_over_its_limit() =>
        Gen.Select(Gen.Double[0.001, 400], Gen.Double[0, 0.3], Gen.Double[100, 1500], Gen.Double[2, 30], Gen.Double[0.2, 4], Gen.Double[0.005, 2], Gen.Bool, Gen.Bool).Sample(
            (kilograms, room, density, bucket, scoop, mark, withScoop, withDensity) =>
            {
                var measures = FieldMeasures.Of(Volume.FromLiters(bucket), withScoop ? Volume.FromLiters(Math.Min(scoop, bucket)) : null, Mass.FromKilograms(mark), null, null);
                var most = kilograms * (1 + room);
                var amount = MeasuringOut.For(Mass.FromKilograms(kilograms), default, Mass.FromKilograms(most), withDensity ? new BulkDensity(Density.FromKilogramsPerCubicMeter(density), HalfAKiloALitre.Source) : null, measures);

                Assert.InRange(amount.Measured.Kilograms, double.Epsilon, most * (1 + 1e-8));
                Assert.True(amount.How != MeasuringWay.ToScaleMark || Math.Abs(amount.Measured.Kilograms - kilograms) <= mark * (1 + 1e-9));
                Assert.True(amount.How != MeasuringWay.ByVolume || Math.Abs(amount.Change) <= 0.05 + 1e-9);
            },
            iter: 3000);

    private static MeasuredAmount Measured(double kilograms, double most, FieldMeasures measures) =>
        MeasuringOut.For(Mass.FromKilograms(kilograms), default, Mass.FromKilograms(most), HalfAKiloALitre, measures);
}
