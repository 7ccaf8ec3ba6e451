using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.CoverCrops.Biomass;
using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;
using static SoilAdvisor.Agronomy.Tests.CoverCrops.InventedCoverCrop;

namespace SoilAdvisor.Agronomy.Tests.CoverCrops;

public sealed class StandBiomassTests
{
    private static readonly MassShare AllGround = MassShare.FromFraction(1);

    // North Carolina worksheet on legume biomass: two frames of 2 by 2 ft, 1.2 lb dry in all, 6,534 lb/acre.
    [Fact]
    public void Dry_matter_is_all_dry_weight_over_all_sampled_area()
    {
        var cuts = new[] { Cut(4, Mass.FromPounds(0.9)), Cut(4, Mass.FromPounds(0.3)) };

        Assert.Equal(6534, CutStand.DryMatter(cuts).PoundsPerAcre, 1e-6);
        Assert.Equal(6534, CutStand.DryMatter([Cut(8, Mass.FromPounds(1.2))]).PoundsPerAcre, 1e-6);
    }

    // By hand: 100 g from 1 sq ft and 100 g from 9 sq ft are 200 g on 10 sq ft, 200 / 453.59237 × 43,560 / 10 = 1,920.66 lb/acre. The mean of the two frames would be 5,335.
    [Fact]
    public void Frames_of_different_size_are_not_averaged() =>
        Assert.Equal(1920.66, CutStand.DryMatter([Cut(1, Mass.FromGrams(100)), Cut(9, Mass.FromGrams(100))]).PoundsPerAcre, 0.01);

    [Fact]
    public void A_fresh_cut_counts_with_its_dry_matter_only()
    {
        var dry = CutStand.DryMatter([Cut(4, Mass.FromGrams(150))]);
        var fresh = CutStand.DryMatter([Cut(4, Mass.FromGrams(1000)) with { DryMatter = MassShare.FromPercent(15) }]);

        Assert.Equal(dry.PoundsPerAcre, fresh.PoundsPerAcre, 1e-9);
    }

    // North Dakota extension column: 6 in of green broadleaf on all the ground is 2,000 lb/acre, each inch above it 150; rye and small grains 2,000 at 8 in.
    [Theory]
    [InlineData("Fabaceae", 6, 100, 2000)]
    [InlineData("Fabaceae", 7, 100, 2150)]
    [InlineData("Fabaceae", 18, 60, 2280)]
    [InlineData("Poaceae", 8, 100, 2000)]
    public void Height_gives_an_estimate_by_the_rule_of_thumb(string family, double inches, double cover, double pounds) =>
        Assert.Equal(pounds, new StandHeight(Length.FromInches(inches), MassShare.FromPercent(cover)).DryMatter(Of("x", family, "annual", "cool")).Value.PoundsPerAcre, 1e-6);

    [Theory]
    [InlineData("Fabaceae", 5.9)]
    [InlineData("Fabaceae", 60.1)]
    [InlineData("Poaceae", 7.9)]
    [InlineData("Poaceae", 72.1)]
    public void Outside_its_rule_height_tells_nothing(string family, double inches) =>
        Assert.Equal("height-out-of-rule", new StandHeight(Length.FromInches(inches), AllGround).DryMatter(Of("x", family, "annual", "cool")).Reason.Code);

    // 3,000 lb of mature rye at 0.7 % N and 1,000 lb of vetch at 3.5 %: (21 + 35) / 4,000 = 1.4 %, below the line's zero of 1.5 % (PNW 636, highlights).
    [Fact]
    public void A_stand_of_three_quarters_cereal_ties_up_a_little_where_halves_would_be_credited()
    {
        var blend = BiomassFormulas.BlendedNitrogen.Of((MassPerArea.FromPoundsPerAcre(3000), MassShare.FromPercent(0.7), MassPerArea.FromPoundsPerAcre(1000), MassShare.FromPercent(3.5)));
        var credit = CoverCropFormulas.NitrogenCredit.Of((MassPerArea.FromPoundsPerAcre(4000), CoverCropFormulas.PlantAvailableNitrogen.Of(blend)));

        Assert.Equal(1.4, blend.Percent, 1e-9);
        Assert.Equal(-3.5, credit.PoundsPerAcre, 1e-9);
    }

    [Theory]
    [InlineData(0, 3.5)]
    [InlineData(4000, 0.7)]
    public void A_blend_lies_between_its_parts(double cereal, double expected) =>
        Assert.Equal(expected, BiomassFormulas.BlendedNitrogen.Of((MassPerArea.FromPoundsPerAcre(cereal), MassShare.FromPercent(0.7), MassPerArea.FromPoundsPerAcre(4000 - cereal), MassShare.FromPercent(3.5))).Percent, 1e-9);

    private static CutSample Cut(double squareFeet, Mass weighed) => new(Area.FromSquareFeet(squareFeet), weighed, null);
}
