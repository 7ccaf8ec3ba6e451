using SoilAdvisor.Agronomy.CoverCrops.Seasons;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Planning.CoverSeason;
using UnitsNet;
using static SoilAdvisor.Planning.Tests.CoverSeason.InventedSeason;

namespace SoilAdvisor.Planning.Tests.CoverSeason;

public sealed class SeasonPlannerTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 12)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_season_scores_as_high_as_the_best_of_all_combinations(int seed)
    {
        var (gaps, wish) = InventedSeason.Random(seed);

        var season = SeasonPlanner.Plan(gaps, wish, default);

        SeasonLaws.Hold(season);
        Assert.True(season.IsBest);
        Assert.Equal(EverySeason.Best(gaps, wish), season.Points - season.Taken);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void A_second_formulation_and_another_solver_find_the_same_points(int seed)
    {
        var dice = new Random(seed);
        var gaps = Enumerable.Range(0, 12).Select(i => Gap($"B{i}", 0, dice.Next(50, 400), null, [.. All.Select(c => (c, Math.Round(dice.NextDouble() * 9, 1)))])).ToList();
        var wish = new SeasonWish(3, 2, null, false, [new SeedStock("oats", Mass.FromGrams(500), false, null, null), new SeedStock("pea", Mass.FromGrams(300), false, null, null)]);

        var season = SeasonPlanner.Plan(gaps, wish, default);

        SeasonLaws.Hold(season);
        Assert.Equal(SecondSeasonSolver.Best(gaps, wish), (double)(season.Points - season.Taken), 1e-6);
    }

    [Fact]
    public void The_same_request_gives_the_same_season()
    {
        var (gaps, wish) = InventedSeason.Random(7);

        string Said() => string.Join('|', SeasonPlanner.Plan(gaps, wish, default).Stands.Select(s => $"{s.Choice?.CoverCrop.Id} {s.Said?.Value}"));

        Assert.Equal(Said(), Said());
    }

    [Fact]
    public void Each_bed_gets_its_best_where_nothing_is_limited()
    {
        var season = SeasonPlanner.Plan([Gap("A", 0, null, (Buckwheat, 5), (Oats, 4)), Gap("B", 0, null, (Oats, 6), (Buckwheat, 1))], Free, default);

        Assert.Equal(["buckwheat", "oats"], season.Stands.Select(s => s.Choice!.CoverCrop.Id));
        Assert.All(season.Stands, s => Assert.Null(s.Said));
    }

    // The further species earns one point more.
    [Theory]
    [InlineData(1.1, "buckwheat")]
    [InlineData(0.9, "mustard")]
    public void A_further_species_is_grown_only_where_it_earns_more_than_it_costs(double cost, string onB)
    {
        var season = SeasonPlanner.Plan([Gap("A", 0, null, (Buckwheat, 6)), Gap("B", 0, null, (Mustard, 6), (Buckwheat, 5))], Free with { PointsPerSpecies = (decimal)cost }, default);

        Assert.Equal(onB, season.Stands[1].Choice!.CoverCrop.Id);
    }

    [Fact]
    public void What_was_traded_is_said_in_words()
    {
        var season = SeasonPlanner.Plan([Gap("A", 0, null, (Buckwheat, 6)), Gap("B4", 0, null, (Mustard, 6), (Buckwheat, 5))], Free with { PointsPerSpecies = 2 }, default);

        Assert.Equal("Buckwheat scores 1 point less here than Mustard. Mustard would be a further species, and each costs 2 points.", season.Stands[1].Said!.Value);
    }

    [Fact]
    public void The_most_species_hold_and_are_named_as_the_reason()
    {
        var season = SeasonPlanner.Plan([Gap("A", 0, null, (Buckwheat, 9)), Gap("B", 0, null, (Mustard, 9), (Buckwheat, 1))], Free with { MostSpecies = 1 }, default);

        Assert.Single(season.Seed);
        Assert.Equal("Buckwheat scores 8 points less here than Mustard. Mustard would be a further species, and you asked for at most 1.", season.Stands[1].Said!.Value);
    }

    [Theory]
    [InlineData(200, 2)]
    [InlineData(199, 1)]
    public void Seed_that_cannot_be_bought_reaches_only_so_far(double grams, int beds)
    {
        var wish = Free with { Seed = [new SeedStock("buckwheat", Mass.FromGrams(grams), false, null, null)] };
        var season = SeasonPlanner.Plan([Gap("A", 0, null, (Buckwheat, 6), (Oats, 2)), Gap("B", 0, null, (Buckwheat, 6), (Oats, 2))], wish, default);

        SeasonLaws.Hold(season);
        Assert.Equal(beds, season.Stands.Count(s => s.Choice!.CoverCrop.Id == "buckwheat"));
        Assert.Equal(beds == 1, season.Stands.Any(s => s.Said?.Value.Contains("not enough seed of Buckwheat", StringComparison.Ordinal) == true));
    }

    [Fact]
    public void Only_seed_on_hand_leaves_beds_bare_rather_than_buying()
    {
        var season = SeasonPlanner.Plan([Gap("A", 0, null, (Buckwheat, 6))], Free with { OnlySeedOnHand = true }, default);

        Assert.Null(season.Stands[0].Choice);
        Assert.StartsWith("Stays bare. There is not enough seed of Buckwheat", season.Stands[0].Said!.Value, StringComparison.Ordinal);
    }

    // 230 g needed, 30 g on hand: 200 g are one pack of 200 g; with 29 g on hand they are two.
    [Theory]
    [InlineData(30, 1)]
    [InlineData(29, 2)]
    public void Whole_packs_are_bought(double onHand, int packs)
    {
        var wish = Free with { Seed = [new SeedStock("buckwheat", Mass.FromGrams(onHand), true, Mass.FromGrams(200), new Money(5, "USD"))] };
        var season = SeasonPlanner.Plan([Gap("A", 0, 230, null, (Buckwheat, 6))], wish, default);

        var seed = Assert.Single(season.Seed);
        Assert.Equal((packs, packs * 1.00m), (seed.Packs!.Value, seed.Cost!.Value.Value));
    }

    [Fact]
    public void Of_equal_points_the_cheaper_seed_is_taken()
    {
        var wish = Free with { Seed = [new SeedStock("buckwheat", Mass.Zero, true, null, new Money(9, "USD")), new SeedStock("oats", Mass.Zero, true, null, new Money(1, "USD"))] };
        var season = SeasonPlanner.Plan([Gap("A", 0, null, (Buckwheat, 5), (Oats, 5))], wish, default);

        Assert.Equal("oats", season.Stands[0].Choice!.CoverCrop.Id);
    }

    // The gaps of one bed lie ninety days apart from sowing to sowing: killed on 16 August (46 days after 1 July), sown again on 29 September.
    [Theory]
    [InlineData(1, "radish")]
    [InlineData(2, "oats")]
    public void A_family_comes_back_to_a_bed_only_after_its_gap(int months, string second)
    {
        var season = SeasonPlanner.Plan([Gap("A", 0, null, (Mustard, 9)), Gap("A", 90, null, (Radish, 9), (Oats, 2))], Free with { FamilyGapMonths = months }, default);

        SeasonLaws.Hold(season);
        Assert.Equal(second, season.Stands[1].Choice!.CoverCrop.Id);
    }

    [Fact]
    public void A_crop_of_the_family_on_the_bed_keeps_a_cover_crop_off_it_and_is_named()
    {
        var cabbage = new CropTime("Cabbage", "Brassicaceae", Start.AddDays(-90), Start.AddDays(-1));
        var season = SeasonPlanner.Plan([Gap("A", 0, [cabbage], (Mustard, 9), (Oats, 2)), Gap("B", 0, null, (Mustard, 9), (Oats, 2))], Free with { FamilyGapMonths = 12 }, default);

        Assert.Equal(["oats", "mustard"], season.Stands.Select(s => s.Choice!.CoverCrop.Id));
        Assert.Contains("the family of Cabbage (Brassicaceae)", season.Stands[0].Said!.Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(-1, true)]
    [InlineData(0.1, false)]
    public void Where_the_reasons_against_outweigh_the_bed_stays_bare(double points, bool bare)
    {
        var stand = SeasonPlanner.Plan([Gap("A", 0, null, (Mustard, points))], Free, default).Stands[0];

        Assert.Equal(bare, stand.Choice is null);
        Assert.Equal(bare, stand.Said?.Value.Contains("outweigh", StringComparison.Ordinal) == true);
    }

    [Fact]
    public void A_gap_that_nothing_fits_stays_bare_and_says_so() =>
        Assert.Contains("Nothing in the tables fits", SeasonPlanner.Plan([Gap("A", 0, null)], Free, default).Stands[0].Said!.Value, StringComparison.Ordinal);

    [Fact]
    public void Seed_without_a_rate_is_not_counted_and_that_is_said()
    {
        var season = SeasonPlanner.Plan([Gap("A", 0, grams: null, null, (Mustard, 5))], Free, default);

        Assert.Null(Assert.Single(season.Seed).Needed);
        Assert.Contains(season.Assumptions, a => a.Code == "season-seed-unknown");
    }
}
