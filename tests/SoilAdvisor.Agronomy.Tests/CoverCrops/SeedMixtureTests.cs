using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.CoverCrops.Mixtures;
using SoilAdvisor.Agronomy.CoverCrops.Seed;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;
using static SoilAdvisor.Agronomy.Tests.CoverCrops.InventedCoverCrop;

namespace SoilAdvisor.Agronomy.Tests.CoverCrops;

public sealed class SeedMixtureTests
{
    private static readonly Area Bed = Area.FromSquareFeet(250);

    private static readonly CoverCropRules Rules = new(new[]
    {
        Rule(CoverCropRules.BroadcastWorkedIn, 1.1m), Rule(CoverCropRules.OnTheSurface, 1.2m), Rule(CoverCropRules.LeastGermination, 80), Rule(CoverCropRules.TwoSpeciesShare, 60),
        Rule(CoverCropRules.RyeOverLegume, 50, "it smothers"), Rule(CoverCropRules.BrassicaShare, null, "keep it low"), Rule(CoverCropRules.TwoPasses, null, "two passes"),
    }.ToDictionary(r => r.Rule, StringComparer.Ordinal));

    private static readonly CoverCrop Grain = Of("grain", "Poaceae", "cool annual", "cool", Figure("drilled-rate", 90, "lb/acre"), Figure("seeds-per-pound", 13_000, "seeds/lb"), Range("seeding-depth", 0.5m, 1, "in"), Range("days-to-use", 60, 70, "days"));

    private static readonly CoverCrop Pea = Of("pea", "Fabaceae", "cool annual", "cool", Figure("drilled-rate", 90, "lb/acre"), Text("inoculant", "pea group"), Range("seeding-depth", 1.5m, 3, "in"), Range("days-to-use", 50, 65, "days"));

    // University of Maryland Extension, Cover Crops for Gardens (2023): about 60 % of the full rate of each of two species. 60 % of 90 is 54 lb/acre.
    [Fact]
    public void Two_species_without_shares_get_the_garden_rule()
    {
        var mixture = Sow(Part(Grain), Part(Pea));

        Assert.All(mixture.Species, s => Assert.Equal(54, s.PureLive.PoundsPerAcre, 1e-9));
        Assert.Equal(120, mixture.TotalShare!.Value.Percent, 1e-9);
        Assert.Contains(mixture.Assumptions, a => a.Code == "mixture-garden-share");
    }

    // Proportional replacement: half of 90 lb/acre is 45.
    [Fact]
    public void Shares_of_a_half_give_half_the_full_rate_of_each()
    {
        var mixture = Sow(Part(Grain, share: 50), Part(Pea, share: 50));

        Assert.All(mixture.Species, s => Assert.Equal(45, s.PureLive.PoundsPerAcre, 1e-9));
        Assert.Equal(90, mixture.Seed.PoundsPerAcre, 1e-9);
        Assert.Equal(100, mixture.TotalShare!.Value.Percent, 1e-9);
    }

    [Fact]
    public void Three_species_without_shares_share_the_full_rate_evenly()
    {
        var mixture = Sow(Part(Grain), Part(Pea), Part(Of("third", "Linaceae", "cool annual", "cool", Figure("drilled-rate", 60, "lb/acre"))));

        Assert.Equal([30, 30, 20], mixture.Species.Select(s => Math.Round(s.PureLive.PoundsPerAcre, 9)));
        Assert.Contains(mixture.Assumptions, a => a.Code == "mixture-equal-shares");
    }

    // Ten seeds on a square foot are 435,600 on an acre; at 13,000 a pound that is 33.5077 lb, 37.2308 % of 90 lb.
    [Fact]
    public void Seeds_on_a_square_foot_give_the_rate_and_its_share()
    {
        var sown = Assert.Single(Sow(Part(Grain) with { Seeds = SeedsPerArea.FromPerSquareFoot(10) }).Species);

        Assert.Equal(33.5077, sown.PureLive.PoundsPerAcre, 1e-4);
        Assert.Equal(37.2308, sown.Share!.Value.Percent, 1e-4);
    }

    [Fact]
    public void Seeds_on_a_square_foot_ask_for_a_seed_count()
    {
        Assert.Equal("no-seed-count", Answer(Part(Pea) with { Seeds = SeedsPerArea.FromPerSquareFoot(10) }).Reason.Code);
        Assert.Equal(43.56, Assert.Single(Sow(Part(Pea) with { Seeds = SeedsPerArea.FromPerSquareFoot(10), Count = SeedCount.FromPerPound(10_000) }).Species).PureLive.PoundsPerAcre, 1e-9);
    }

    [Fact]
    public void A_rate_printed_for_broadcasting_goes_before_the_factor()
    {
        var both = Of("both", "Linaceae", "cool annual", "cool", Figure("drilled-rate", 50, "lb/acre"), Figure("broadcast-rate", 70, "lb/acre"));

        Assert.Equal(70, FullRate.Of(both, WayOfSowing.Broadcast, Rules).Value.High.PoundsPerAcre, 1e-9);
        Assert.Equal(99, FullRate.Of(Grain, WayOfSowing.Broadcast, Rules).Value.High.PoundsPerAcre, 1e-9);
        Assert.Equal(108, FullRate.Of(Grain, WayOfSowing.Surface, Rules).Value.High.PoundsPerAcre, 1e-9);
        Assert.Equal("seed-rate-by-factor", FullRate.Of(Grain, WayOfSowing.Surface, Rules).Value.Assumption!.Code);
    }

    [Fact]
    public void Without_a_factor_in_the_tables_none_is_invented() =>
        Assert.Equal("no-seeding-factor", FullRate.Of(Grain, WayOfSowing.Broadcast, new CoverCropRules(new Dictionary<string, CoverCropRule>())).Reason.Code);

    [Theory]
    [InlineData(100, 80, 20, true)]
    [InlineData(100, 80, 20.1, false)]
    [InlineData(100.1, 80, 0, false)]
    [InlineData(0, 80, 0, false)]
    [InlineData(98, 0, 10, false)]
    [InlineData(0.1, 0.1, 0, true)]
    public void A_seed_tag_never_holds_more_than_all_of_the_bag(decimal purity, decimal germination, decimal hard, bool given) =>
        Assert.Equal(given, SeedTag.Of(purity, germination, hard).IsGiven);

    [Theory]
    [InlineData(80, false)]
    [InlineData(79.9, true)]
    public void Germination_below_the_least_that_is_asked_of_seed_is_said(decimal germination, bool said) =>
        Assert.Equal(said, Sow(Part(Grain) with { Tag = SeedTag.Of(98, germination, 0).Value }).Assumptions.Any(a => a.Code == "low-germination"));

    [Fact]
    public void Pure_live_seed_is_at_most_all_of_the_bag_and_never_lowers_the_seed_to_sow()
    {
        for (var purity = 10; purity <= 100; purity += 10)
        {
            for (var germination = 10; germination <= 100; germination += 10)
            {
                var sown = Assert.Single(Sow(Part(Grain) with { Tag = SeedTag.Of(purity, germination, 0).Value }).Species);

                Assert.InRange(sown.PureLiveShare.Percent, 0, 100);
                Assert.True(sown.Seed >= sown.PureLive);
                Assert.Equal(sown.PureLive.PoundsPerAcre, sown.PureLiveShare.In(sown.Seed).PoundsPerAcre, 1e-6);
            }
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(40)]
    public void Seed_for_a_bed_grows_with_its_ground(double times)
    {
        var one = SeedMixtures.For([Part(Grain, share: 50), Part(Pea, share: 50)], WayOfSowing.Drilled, Bed, Rules).Value;
        var more = SeedMixtures.For([Part(Grain, share: 50), Part(Pea, share: 50)], WayOfSowing.Drilled, Bed * times, Rules).Value;

        Assert.Equal(one.ForBed!.Value.Grams * times, more.ForBed!.Value.Grams, 1e-6);
        // 90 lb/acre on 250 sq ft: 90 × 250 / 43,560 = 0.516529 lb, 8.26446 oz, 234.294 g.
        Assert.Equal(8.26446, one.ForBed.Value.Ounces, 1e-5);
        Assert.Equal(234.294, one.ForBed.Value.Grams, 1e-3);
    }

    [Fact]
    public void No_price_is_assumed()
    {
        Assert.Null(Sow(Part(Grain, share: 50) with { PricePerKilogram = new Money(2, "USD") }, Part(Pea, share: 50)).Cost);
        Assert.Equal(new Money(2, "USD").Value * 0.234293m, Sow(Part(Grain) with { PricePerKilogram = new Money(2, "USD") }).Cost!.Value.Value, 3);
    }

    [Fact]
    public void One_inoculant_serves_the_legumes_of_a_group_and_no_grain()
    {
        var vetch = Of("vetch", "Fabaceae", "winter annual", "cool", Figure("drilled-rate", 20, "lb/acre"), Text("inoculant", "pea group"));

        var inoculant = Assert.Single(Sow(Part(Grain), Part(Pea), Part(vetch)).Inoculants);

        Assert.Equal(("pea group", "pea vetch"), (inoculant.Group.Value, string.Join(' ', inoculant.Legumes.Select(l => l.Id))));
    }

    [Fact]
    public void Partners_that_go_to_different_depths_are_told_with_both_depths() =>
        Assert.Contains(Sow(Part(Grain), Part(Pea)).Warnings, w => w.Value.Contains("0.5 to 1 in", StringComparison.Ordinal) && w.Value.Contains("1.5 to 3 in", StringComparison.Ordinal) && w.Value.EndsWith("two passes", StringComparison.Ordinal));

    [Fact]
    public void Partners_whose_days_do_not_meet_are_told_with_both()
    {
        var quick = Of("quick", "Polygonaceae", "summer annual", "warm", Figure("drilled-rate", 50, "lb/acre"), Range("days-to-use", 35, 40, "days"));

        var warnings = Sow(Part(Grain), Part(quick)).Warnings;

        Assert.Contains(warnings, w => w.Value.Contains("35 to 40 days", StringComparison.Ordinal) && w.Value.Contains("60 to 70", StringComparison.Ordinal));
        Assert.Contains(warnings, w => w.Value.Contains("wants warm weather", StringComparison.Ordinal));
        Assert.DoesNotContain(Sow(Part(Grain), Part(Pea)).Warnings, w => w.Value.Contains("days", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(50, false)]
    [InlineData(50.1, true)]
    public void Rye_above_half_its_rate_with_a_legume_is_told(double share, bool told)
    {
        var rye = Of("cereal-rye", "Poaceae", "winter annual", "cool", Figure("drilled-rate", 90, "lb/acre"));

        Assert.Equal(told, Sow(Part(rye, share), Part(Pea, 40)).Warnings.Any(w => w.Value.EndsWith("it smothers", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(60, 60, false)]
    [InlineData(60, 60.1, true)]
    public void Shares_above_the_usual_sum_are_told(double first, double second, bool told) =>
        Assert.Equal(told, Sow(Part(Grain, first), Part(Pea, second)).Warnings.Any(w => w.Value.StartsWith("The shares add up", StringComparison.Ordinal)));

    [Fact]
    public void A_single_species_has_no_partner_to_fit() => Assert.Empty(Sow(Part(Grain)).Warnings);

    [Fact]
    public void A_species_twice_is_refused() => Assert.Equal("species-twice", Answer(Part(Grain), Part(Grain)).Reason.Code);

    private static CoverCropRule Rule(string id, decimal? value, string? text = null) => new(id, value, text, InventedCoverCrop.Source, null);

    private static MixturePart Part(CoverCrop cover, double? share = null) => new(cover, share is { } s ? MassShare.FromPercent(s) : null, null, null, null, null, null);

    private static Answer<SeedMixture> Answer(params MixturePart[] parts) => SeedMixtures.For(parts, WayOfSowing.Drilled, Bed, Rules);

    private static SeedMixture Sow(params MixturePart[] parts) => Answer(parts).Value;
}
