using CsCheck;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Tests.Plans;

public class BedGeometryTests
{
    private static readonly Length Hundred = Length.FromFeet(100);
    private static readonly Length Thirty = Length.FromInches(30);

    [Fact]
    public void A_bed_of_30_inches_by_100_feet_has_250_square_feet_and_says_that_only_its_top_is_spread()
    {
        var ground = BedGeometry.Ground(Hundred, Thirty, null, null, null).Value;

        Assert.Equal(250, ground.Area.SquareFeet, 9);
        Assert.Equal("30 in × 100 ft = 250 sq ft", ground.Shown);
        Assert.Equal(SpreadBasis.BedTop, ground.Spread);
        Assert.Equal("spread-bed-top", Assert.Single(ground.Assumptions).Code);
    }

    [Fact]
    public void Nothing_is_assumed_when_the_ground_is_stated() =>
        Assert.Empty(BedGeometry.Ground(Hundred, Thirty, null, null, SpreadBasis.BedTop).Value.Assumptions);

    [Fact]
    public void Meters_work_like_feet()
    {
        var ground = BedGeometry.Ground(Length.FromMeters(10), Length.FromMeters(0.8), null, null, SpreadBasis.BedTop).Value;

        Assert.Equal(8, ground.Area.SquareMeters, 9);
        Assert.Equal("0.8 m × 10 m = 86.1 sq ft", ground.Shown);
    }

    [Fact]
    public void Bed_and_path_count_from_centre_to_centre()
    {
        var ground = BedGeometry.Ground(Hundred, Thirty, null, Length.FromInches(48), SpreadBasis.BedAndPath).Value;

        Assert.Equal(400, ground.Area.SquareFeet, 9);
        Assert.Equal("48 in (bed and path) × 100 ft = 400 sq ft", ground.Shown);
    }

    [Theory]
    [InlineData(29.9, "center-spacing-too-small")]
    [InlineData(30.0, null)]
    public void Centre_spacing_is_never_narrower_than_the_bed(double inches, string? code)
    {
        var answer = BedGeometry.Ground(Hundred, Thirty, null, Length.FromInches(inches), SpreadBasis.BedAndPath);

        Assert.Equal(code, answer.IsGiven ? null : answer.Reason.Code);
    }

    [Fact]
    public void Bed_and_path_without_a_spacing_is_refused() =>
        Assert.Equal("center-spacing-missing", BedGeometry.Ground(Hundred, Thirty, null, null, SpreadBasis.BedAndPath).Reason.Code);

    [Fact]
    public void A_bed_without_an_area_is_refused()
    {
        Assert.Equal("bed-area-missing", BedGeometry.Ground(null, null, null, null, null).Reason.Code);
        Assert.Equal("bed-area-missing", BedGeometry.Ground(Hundred, null, null, null, null).Reason.Code);
        Assert.Equal("bed-area-missing", BedGeometry.Ground(null, Thirty, null, null, null).Reason.Code);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void A_measure_of_nothing_or_less_is_refused(double feet) =>
        Assert.Equal("bed-measure-out-of-range", BedGeometry.Ground(Length.FromFeet(feet), Thirty, null, null, null).Reason.Code);

    [Theory]
    [InlineData(252, true)]
    [InlineData(253, false)]
    public void A_stated_area_must_agree_with_the_stated_sides(double squareFeet, bool agrees)
    {
        var answer = BedGeometry.Ground(Hundred, Thirty, Area.FromSquareFeet(squareFeet), null, SpreadBasis.BedTop);

        Assert.Equal(agrees ? null : "bed-area-conflict", answer.IsGiven ? null : answer.Reason.Code);
    }

    [Fact]
    public void A_stated_area_stands_as_it_is()
    {
        var ground = BedGeometry.Ground(null, null, Area.FromAcres(0.5), null, SpreadBasis.BedTop).Value;

        Assert.Equal(21_780, ground.Area.SquareFeet, 6);
        Assert.Equal("0.5 ac = 21,780 sq ft", ground.Shown);
    }

    [Fact]
    public void A_band_takes_the_whole_amount_of_the_bed_and_says_so() =>
        Assert.Equal("band-rate-on-bed-top", Assert.Single(BedGeometry.Ground(Hundred, Thirty, null, null, SpreadBasis.Band).Value.Assumptions).Code);

    [Fact]
    public void The_working_shows_the_sides_in_feet()
    {
        var sheet = new WorkingSheet();

        BedGeometry.Ground(Hundred, Thirty, null, null, null, sheet);

        var line = Assert.Single(sheet.Lines);
        Assert.Equal("bed-top-area", line.Formula);
        Assert.Equal([100, 2.5], line.Inputs.Select(i => i.Value));
        Assert.Equal(250, line.Result!.Value, 9);
    }

    [Fact]
    public void A_rate_on_bed_tops_is_a_smaller_rate_on_an_acre_of_beds_and_paths()
    {
        var broadcast = BedFormulas.OnBroadcastAcre.Of((MassPerArea.FromPoundsPerAcre(1600), Thirty, Length.FromInches(48)));

        // 30 of every 48 inches are bed top: 1600 × 30 / 48.
        Assert.Equal(1000, broadcast.PoundsPerAcre, 9);
    }

    [Fact]
    public void Scaling_a_bed_scales_what_a_rate_takes()
    {
        Gen.Select(Gen.Double[1, 500], Gen.Double[0.2, 3], Gen.Double[0.1, 20], Gen.Double[0, 5000]).Sample((length, width, factor, rate) =>
        {
            Mass Amount(double metres) => AreaFormulas.RatePerBed.Of((
                MassPerArea.FromPoundsPerAcre(rate),
                BedGeometry.Ground(Length.FromMeters(metres), Length.FromMeters(width), null, null, SpreadBasis.BedTop).Value.Area));
            return Math.Abs((Amount(length).Kilograms * factor) - Amount(length * factor).Kilograms) <= 1e-9 * (1 + Amount(length * factor).Kilograms);
        });
    }
}
