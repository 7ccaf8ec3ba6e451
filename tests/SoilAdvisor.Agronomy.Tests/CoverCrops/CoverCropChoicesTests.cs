using CsCheck;
using SoilAdvisor.Agronomy.Climate;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;
using static SoilAdvisor.Agronomy.Tests.CoverCrops.InventedCoverCrop;

namespace SoilAdvisor.Agronomy.Tests.CoverCrops;

public class CoverCropChoicesTests
{
    private static readonly FrostDates Frost = new(new DateOnly(2026, 5, 10), new DateOnly(2026, 10, 5));

    [Theory]
    [InlineData(48, false)]
    [InlineData(49, true)]
    [InlineData(50, true)]
    public void A_cover_crop_fits_when_the_gap_gives_the_35_days_it_needs_and_14_before_the_next_crop(int days, bool fits)
    {
        var from = new DateOnly(2026, 6, 20);

        var selection = Select(new Gap(from, from.AddDays(days)), Warm);

        Assert.Equal(fits, selection.Choices.Count == 1);
        Assert.Equal(!fits, selection.Excluded.Count == 1);
    }

    [Fact]
    public void An_excluded_cover_crop_says_how_many_days_are_missing_and_where_that_stands()
    {
        var reason = Assert.Single(Assert.Single(Select(new Gap(new(2026, 6, 20), new(2026, 7, 10)), Warm).Excluded).Reasons);

        Assert.Contains("leaves 6 days after 14 days are kept before the next crop; it needs 35", reason.Text, StringComparison.Ordinal);
        Assert.Equal("days-to-use", reason.Source.Locator);
    }

    [Theory]
    [InlineData(31, true)]
    [InlineData(1, false)]
    public void Frost_ends_what_it_kills(int august, bool fits)
    {
        // First frost 5 October: from 31 August 35 days are left, from 1 September 34.
        var from = fits ? new DateOnly(2026, 8, august) : new DateOnly(2026, 9, august);

        Assert.Equal(fits, Select(new Gap(from, new(2026, 12, 1)), Warm).Choices.Count == 1);
    }

    [Fact]
    public void A_warm_cover_crop_is_sown_after_the_last_spring_frost() =>
        Assert.Equal(new DateOnly(2026, 5, 10), Assert.Single(Select(new Gap(new(2026, 4, 1), new(2026, 7, 15)), Warm).Choices).Window.Sow);

    [Fact]
    public void Frost_dates_that_were_not_given_are_assumed_and_said()
    {
        var none = Ask(new Gap(new(2026, 6, 1), new(2026, 8, 1)), [Warm], [], null, null, null, null, false, null);
        var half = Ask(new Gap(new(2026, 6, 1), new(2026, 8, 1)), [Warm], [], Frost with { FirstFall = null }, null, null, null, false, null);

        Assert.Contains("15 May and 30 September were taken", Assert.Single(none.Assumptions).Text, StringComparison.Ordinal);
        Assert.Contains("30 September was taken", Assert.Single(half.Assumptions).Text, StringComparison.Ordinal);
        Assert.DoesNotContain("15 May", half.Assumptions[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_frost_date_of_29_February_works_in_every_year()
    {
        var southern = new FrostDates(new DateOnly(2028, 2, 29), new DateOnly(2028, 12, 1));

        var choice = Assert.Single(Ask(new Gap(new(2027, 2, 1), new(2027, 5, 1)), [Warm], [], southern, null, null, null, false, null).Choices);

        Assert.Equal(new DateOnly(2027, 2, 28), choice.Window.Sow);
    }

    [Theory]
    [InlineData(54, 40)]
    [InlineData(49, 35)]
    public void Two_weeks_are_kept_before_the_next_crop(int gapDays, int killAfter)
    {
        var from = new DateOnly(2026, 6, 20);

        var choice = Assert.Single(Select(new Gap(from, from.AddDays(gapDays)), Warm).Choices);

        Assert.Equal(killAfter, choice.Window.KillBy.DayNumber - choice.Window.Sow.DayNumber);
        Assert.Equal(14, choice.Window.PlantFrom.DayNumber - choice.Window.KillBy.DayNumber);
    }

    [Theory]
    [InlineData("2026-10-05", true, true)]
    [InlineData("2026-10-06", false, true)]
    [InlineData("2026-11-04", false, true)]
    [InlineData("2026-11-05", false, false)]
    public void Winter_covers_are_sown_by_the_first_frost_and_grains_up_to_a_month_later(string free, bool legume, bool grain)
    {
        var selection = Select(new Gap(DateOnly.Parse(free, System.Globalization.CultureInfo.InvariantCulture), new(2027, 5, 1)), WinterVetch, WinterRye);

        Assert.Equal(legume, selection.Choices.Any(c => c.CoverCrop.Id == "winter-legume"));
        Assert.Equal(grain, selection.Choices.Any(c => c.CoverCrop.Id == "winter-grain"));
    }

    [Theory]
    // Last frost 10 May less six weeks is 29 March; two weeks before the next crop stay free.
    [InlineData("2027-04-11", false)]
    [InlineData("2027-04-12", true)]
    public void A_winter_cover_needs_some_spring(string end, bool fits) =>
        Assert.Equal(fits, Select(new Gap(new(2026, 9, 15), DateOnly.Parse(end, System.Globalization.CultureInfo.InvariantCulture)), WinterRye).Choices.Count == 1);

    [Fact]
    public void A_cover_crop_without_a_printed_number_of_days_is_left_out_and_says_so()
    {
        var excluded = Assert.Single(Select(new Gap(new(2026, 6, 1), new(2026, 8, 1)), WinterVetch).Excluded);

        Assert.Contains("No number of days is held", excluded.Reasons[0].Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(364, false)]
    [InlineData(365, true)]
    public void A_perennial_needs_a_year(int days, bool offered)
    {
        var perennial = Of("perennial", "Fabaceae", "short-lived perennial", "cool");
        var from = new DateOnly(2026, 8, 15);

        Assert.Equal(offered, Select(new Gap(from, from.AddDays(days)), perennial).Choices.Count == 1);
    }

    [Theory]
    [InlineData(23, true)]
    [InlineData(24, false)]
    public void A_cool_annual_has_its_days_until_a_month_after_the_first_frost(int september, bool fits)
    {
        // First frost 5 October and 30 days: 4 November, 42 days after 23 September.
        var selection = Select(new Gap(new(2026, 9, september), new(2027, 3, 31)), CoolAnnual);

        Assert.Equal(fits, selection.Choices.Count == 1);
    }

    [Fact]
    public void Brassica_covers_are_kept_away_from_brassica_vegetables()
    {
        var radish = Of("radish", "Brassicaceae", "cool annual", "cool", Range("days-to-use", 45, 60, "days"));
        var gap = new Gap(new(2026, 8, 1), new(2026, 10, 15));

        Assert.Single(For(gap, null, Vegetable("Solanaceae"), radish).Choices);
        Assert.Contains("carries brassica diseases", Assert.Single(For(gap, null, Vegetable("Brassicaceae"), radish).Excluded).Reasons[0].Text, StringComparison.Ordinal);
        Assert.Single(For(gap, Vegetable("Brassicaceae"), null, radish).Excluded);
    }

    [Fact]
    public void The_same_family_before_or_after_speaks_against_a_cover_crop_plainly()
    {
        var gap = new Gap(new(2026, 6, 1), new(2026, 8, 15));

        var free = Assert.Single(For(gap, null, null, Warm).Choices);
        var related = Assert.Single(For(gap, null, Vegetable("Polygonaceae"), Warm).Choices);

        Assert.Equal(free.Score - 2, related.Score);
        Assert.Contains(related.Reasons, r => r.Points == -2 && r.Text.StartsWith("Same plant family (Polygonaceae)", StringComparison.Ordinal));
    }

    [Fact]
    public void Coming_back_by_seed_speaks_against_a_cover_crop()
    {
        var cover = Of("cover", "Boraginaceae", "summer annual", "warm", Range("days-to-use", 35, 40, "days"), Text("reseeding", "hard seed"), Text("caution", "does not reseed"));

        var choice = Assert.Single(Select(new Gap(new(2026, 6, 1), new(2026, 8, 15)), cover).Choices);

        Assert.Equal(-1, Assert.Single(choice.Reasons, r => r.Kind == "reseeding").Points);
        Assert.Equal(0, Assert.Single(choice.Reasons, r => r.Text.StartsWith("Watch", StringComparison.Ordinal)).Points);
    }

    [Fact]
    public void The_score_is_the_sum_of_the_reasons_and_every_reason_has_a_source()
    {
        var cover = Of("cover", "Boraginaceae", "summer annual", "warm", Range("days-to-use", 35, 40, "days"), Figure("function-weeds", 3, "0-3"), Figure("function-cover-fast", 2, "0-3"), Text("reseeding", "reseeds"));

        var choice = Assert.Single(Select(new Gap(new(2026, 6, 1), new(2026, 8, 15)), cover).Choices);

        // Two points for the days, three and two for its services, one off for seed.
        Assert.Equal(6, choice.Score);
        Assert.Equal(choice.Score, choice.Reasons.Sum(r => r.Points));
        Assert.All(choice.Reasons, r => Assert.NotEmpty(r.Source.SourceId));
    }

    [Fact]
    public void Aims_decide_the_order()
    {
        var weeds = Of("weed-cover", "Boraginaceae", "summer annual", "warm", Range("days-to-use", 35, 40, "days"), Figure("function-weeds", 3, "0-3"));
        var bees = Of("bee-cover", "Boraginaceae", "summer annual", "warm", Range("days-to-use", 35, 40, "days"), Figure("function-pollinators", 3, "0-3"));
        var gap = new Gap(new(2026, 6, 1), new(2026, 8, 15));

        Assert.Equal("bee-cover", Ask(gap, [weeds, bees], ["pollinators"], Frost, null, null, null, false, null).Choices[0].CoverCrop.Id);
        Assert.Equal("weed-cover", Ask(gap, [bees, weeds], ["weeds"], Frost, null, null, null, false, null).Choices[0].CoverCrop.Id);
    }

    [Fact]
    public void Seed_is_the_broadcast_rate_on_the_bed()
    {
        var cover = Of("cover", "Boraginaceae", "summer annual", "warm", Range("days-to-use", 35, 40, "days"), Figure("drilled-rate", 50, "lb/acre"), Figure("broadcast-rate", 70, "lb/acre"));

        var choice = Assert.Single(Ask(new Gap(new(2026, 6, 1), new(2026, 8, 15)), [cover], [], Frost, null, null, Area.FromSquareFeet(435.6), false, null).Choices);

        Assert.Equal(0.7, choice.SeedPerBed!.Value.Pounds, 9);
        Assert.Equal("broadcast-rate", choice.SeedRate!.Property);
    }

    [Fact]
    public void Phosphorus_is_moved_not_added_and_the_shortfall_of_the_bed_stands_beside_it()
    {
        var cover = Of("cover", "Boraginaceae", "summer annual", "warm", Range("days-to-use", 35, 40, "days"), Range("dry-matter", 4000, 6000, "lb/acre"), Figure("phosphorus-percent", 0.25m, "%"));

        var words = Short(cover).Phosphorus!.Value;

        // 4000 × 0.25 % × 2.2914 = 22.9 and 6000 × 0.25 % × 2.2914 = 34.4 lb P2O5.
        Assert.Contains("Takes up and returns about 22.9 to 34.4 lb of P2O5 an acre", words, StringComparison.Ordinal);
        Assert.Contains("moved, not added", words, StringComparison.Ordinal);
        Assert.Contains("The bed is short 60 lb of P2O5 an acre; no cover crop makes that up", words, StringComparison.Ordinal);
        Assert.DoesNotContain("disagree", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_release_begins_stands_in_the_phosphorus_sentence()
    {
        // Worked example on the release threshold of Arcand and others 2010 (derived there from 0.29 %): 4000 lb hold 11.6 lb P, 26.6 lb P2O5.
        var buckwheat = Of("cover", "Polygonaceae", "summer annual", "warm", Range("days-to-use", 35, 40, "days"), Figure("dry-matter", 4000, "lb/acre"), Figure("phosphorus-release-threshold", 0.29m, "%"), Figure("function-phosphorus", 3, "0-3"));

        var choice = Short(buckwheat);

        Assert.Contains("about 26.6 lb of P2O5 an acre", choice.Phosphorus!.Value, StringComparison.Ordinal);
        Assert.Contains("no release was found", choice.Phosphorus.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bed_short_of_phosphorus_counts_the_phosphorus_service()
    {
        var cover = Of("cover", "Boraginaceae", "summer annual", "warm", Range("days-to-use", 35, 40, "days"), Figure("function-phosphorus", 2, "0-3"));
        var gap = new Gap(new(2026, 6, 1), new(2026, 8, 15));

        Assert.Equal(Assert.Single(Select(gap, cover).Choices).Score + 2, Short(cover).Score);
    }

    [Fact]
    public void Nitrogen_is_said_as_if_grown_and_killed_then()
    {
        // The published points of PNW 636: nothing at 1.5 % N, 35 lb a ton at 3.5 %.
        var vetch = Of("cover", "Fabaceae", "summer annual", "warm", Range("days-to-use", 35, 40, "days"), Range("dry-matter", 2000, 4000, "lb/acre"), Figure("nitrogen-percent", 3.5m, "%"));

        var words = Short(vetch).Nitrogen!.Value;

        Assert.StartsWith("If grown and killed then", words, StringComparison.Ordinal);
        Assert.Contains("35 to 70 lb of plant-available nitrogen an acre", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Nitrogen_of_a_legume_stops_at_the_printed_ceiling()
    {
        // PNW 636: legumes up to 100 lb of plant-available nitrogen an acre; 8000 lb at 3.5 % would give 140.
        var vetch = Of("cover", "Fabaceae", "summer annual", "warm", Range("days-to-use", 35, 40, "days"), Range("dry-matter", 4000, 8000, "lb/acre"), Figure("nitrogen-percent", 3.5m, "%"));

        Assert.Contains("70 to 100 lb of plant-available nitrogen", Short(vetch).Nitrogen!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_said_where_nothing_is_held()
    {
        var choice = Short(Warm);

        Assert.Null(choice.Nitrogen);
        Assert.Null(choice.Phosphorus);
        Assert.Null(choice.DryMatter);
        Assert.Null(choice.SeedPerBed);
    }

    [Fact]
    public void A_longer_gap_never_loses_a_cover_crop_that_frost_does_not_kill()
    {
        Gen.Select(Gen.Int[0, 200], Gen.Int[0, 120]).Sample((days, more) =>
        {
            var from = new DateOnly(2026, 4, 1);
            bool Fits(int length) => Select(new Gap(from, from.AddDays(length)), CoolAnnual).Choices.Count == 1;
            return !Fits(days) || Fits(days + more);
        });
    }

    [Fact]
    public void A_choice_is_always_ended_inside_the_gap_after_the_days_it_needs()
    {
        Gen.Select(Gen.Int[0, 364], Gen.Int[0, 300]).Sample((start, days) =>
        {
            var gap = new Gap(new DateOnly(2026, 1, 1).AddDays(start), new DateOnly(2026, 1, 1).AddDays(start + days));
            return Select(gap, Warm, CoolAnnual, WinterRye, WinterVetch).Choices.All(c =>
                c.Window.Sow >= gap.From && c.Window.KillBy <= gap.To && c.Window.KillBy.DayNumber - c.Window.Sow.DayNumber >= (c.Window.DaysNeeded.Low ?? 0));
        });
    }

    private static CoverCropChoice Short(CoverCrop cover) => Assert.Single(Ask(
        new Gap(new(2026, 6, 1), new(2026, 8, 15)), [cover], [], Frost, null, null, null, phosphorusShort: true, MassPerArea.FromPoundsPerAcre(60)).Choices);

    private static CoverCropSelection Select(Gap gap, params CoverCrop[] covers) => For(gap, null, null, covers);

    private static CoverCropSelection For(Gap gap, Crop? last, Crop? next, params CoverCrop[] covers) =>
        Ask(gap, covers, [], Frost, last, next, null, false, null);
}
