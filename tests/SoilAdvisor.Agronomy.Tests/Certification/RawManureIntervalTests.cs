using CsCheck;
using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Plans;
using static SoilAdvisor.Agronomy.Tests.Certification.InventedBed;

namespace SoilAdvisor.Agronomy.Tests.Certification;

// 7 CFR 205.203(c)(1)(ii) and (iii): not less than 120 days before harvest where the edible part touches soil, not less than 90 where it does not.
public class RawManureIntervalTests
{
    [Theory]
    [InlineData(119, FindingState.Act)]
    [InlineData(120, FindingState.Pass)]
    [InlineData(121, FindingState.Pass)]
    public void A_crop_that_touches_soil_waits_120_days(int days, FindingState state)
    {
        var finding = Assert.Single(Findings(Spread(RawManure, new(2026, 4, 15), new(2026, 4, 15)), Planting(Carrot, new DateOnly(2026, 4, 15).AddDays(days))));

        Assert.Equal(state, finding.State);
        Assert.Equal("raw-manure-120", finding.Rule);
        Assert.Equal(state == FindingState.Act, finding.Blocks);
        Assert.Contains($"{days} days later", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(89, FindingState.Act)]
    [InlineData(90, FindingState.Pass)]
    [InlineData(91, FindingState.Pass)]
    public void A_crop_that_does_not_touch_soil_waits_90_days(int days, FindingState state)
    {
        var finding = Assert.Single(Findings(Spread(RawManure, new(2026, 4, 15), new(2026, 4, 15)), Planting(Corn, new DateOnly(2026, 4, 15).AddDays(days))));

        Assert.Equal(state, finding.State);
        Assert.Equal("raw-manure-90", finding.Rule);
    }

    [Theory]
    [InlineData("2026-04-01", 120, "2026-07-30")]
    [InlineData("2026-04-01", 90, "2026-06-30")]
    [InlineData("2025-11-10", 120, "2026-03-10")]
    [InlineData("2027-12-31", 120, "2028-04-29")]
    [InlineData("2026-12-31", 120, "2027-04-30")]
    [InlineData("2028-01-31", 90, "2028-04-30")]
    [InlineData("2027-01-31", 90, "2027-05-01")]
    [InlineData("2028-02-29", 120, "2028-06-28")]
    public void The_earliest_harvest_is_counted_on_the_calendar_over_month_ends_and_leap_days(string workedIn, int days, string earliest)
    {
        // Counted by hand on a calendar.
        var planting = Planting(days == 120 ? Carrot : Corn);

        Assert.Equal(Date(earliest), RawManureInterval.EarliestHarvest(Date(workedIn), planting));
        Assert.True(RawManureInterval.IsMet(Date(workedIn), planting with { FirstHarvest = Date(earliest) }));
        Assert.False(RawManureInterval.IsMet(Date(workedIn), planting with { FirstHarvest = Date(earliest).AddDays(-1) }));
    }

    [Fact]
    public void A_harvest_that_comes_too_early_is_told_its_first_day()
    {
        var finding = Assert.Single(Findings(Spread(RawManure, new(2026, 4, 1), new(2026, 4, 15)), Planting(Carrot, new(2026, 8, 12))));

        // The count runs from working in, 15 April, not from spreading, 1 April.
        Assert.Equal(FindingState.Act, finding.State);
        Assert.Contains("only 119 days later", finding.Message, StringComparison.Ordinal);
        Assert.Contains("Harvest from 13 August 2026", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Manure_that_was_never_worked_in_never_passes_and_the_record_is_named()
    {
        var finding = Assert.Single(Findings(Spread(RawManure, new(2020, 1, 1), null), Planting(Carrot, new(2026, 8, 12))));

        Assert.Equal(FindingState.NotDecidable, finding.State);
        Assert.Equal("date the manure was worked into the soil", finding.Record);
    }

    [Fact]
    public void Without_a_first_harvest_nothing_is_decided_but_the_earliest_day_is_said()
    {
        var finding = Assert.Single(Findings(Spread(RawManure, new(2026, 4, 1), new(2026, 4, 1)), Planting(Carrot)));

        Assert.Equal(FindingState.NotDecidable, finding.State);
        Assert.Equal("date of the first harvest", finding.Record);
        Assert.Contains("30 July 2026", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_growers_word_on_soil_contact_goes_before_the_tables()
    {
        Assert.Equal(90, RawManureInterval.DaysFor(Planting(Carrot, contact: SoilContact.NoContact)));
        Assert.Equal(120, RawManureInterval.DaysFor(Planting(Corn, contact: SoilContact.Contact)));
    }

    [Fact]
    public void A_crop_that_people_do_not_eat_has_no_interval_but_the_next_food_crop_keeps_it()
    {
        var findings = Findings(Spread(RawManure, new(2026, 4, 1), new(2026, 4, 1)), Planting(Flowers, new(2026, 6, 1)), Planting(Carrot, new(2026, 7, 29)));

        Assert.Equal([FindingState.Pass, FindingState.Act], findings.Select(f => f.State));
        Assert.Equal("raw-manure-non-food", findings[0].Rule);
    }

    [Fact]
    public void Manure_on_a_cover_crop_binds_the_next_food_crop()
    {
        var bed = Bed(Planting(Carrot, new(2026, 7, 1))) with
        {
            Previous = [new PreviousStand("cereal-rye", true, null, null, null, new(2026, 4, 20))],
            Applied = [Spread(RawManure, new(2026, 3, 10), new(2026, 3, 10))],
        };

        Assert.Equal(FindingState.Act, Assert.Single(OrganicChecks.For(bed, [], [], NoNeed, Rules, Today)).State);
    }

    [Theory]
    [InlineData("2026-05-31", FindingState.Pass)]
    [InlineData("2026-06-01", FindingState.Act)]
    public void Manure_after_the_last_harvest_does_not_bind_that_harvest(string harvestEnd, FindingState state) =>
        Assert.Equal(state, Assert.Single(Findings(Spread(RawManure, new(2026, 6, 1), new(2026, 6, 1)), Planting(Carrot, new(2026, 5, 1), Date(harvestEnd)))).State);

    [Fact]
    public void Manure_during_an_open_harvest_asks_for_its_last_day()
    {
        var finding = Assert.Single(Findings(Spread(RawManure, new(2026, 6, 1), new(2026, 6, 1)), Planting(Carrot, new(2026, 5, 1))));

        Assert.Equal(FindingState.NotDecidable, finding.State);
        Assert.Equal("date of the last harvest", finding.Record);
    }

    [Fact]
    public void A_planned_manure_counts_from_its_last_spreading_day_and_blocks_when_undecided()
    {
        var bed = Bed(Planting(Carrot, new(2026, 7, 29)));

        var early = Assert.Single(OrganicChecks.For(bed, [Planned(RawManure, new(2026, 4, 1))], [], NoNeed, Rules, Today));
        var undated = Assert.Single(OrganicChecks.For(bed, [Planned(RawManure)], [], NoNeed, Rules, Today));

        Assert.Equal((FindingState.Act, true), (early.State, early.Blocks));
        Assert.Equal((FindingState.NotDecidable, true), (undated.State, undated.Blocks));
    }

    [Fact]
    public void A_manure_for_a_later_crop_does_not_bind_the_crop_before_it()
    {
        var bed = Bed(Planting(Carrot, new(2026, 5, 1)), Planting(Carrot, new(2026, 12, 1)));

        Assert.Equal(FindingState.Pass, Assert.Single(OrganicChecks.For(bed, [Planned(RawManure, new(2026, 7, 1), planting: 1)], [], NoNeed, Rules, Today)).State);
    }

    [Fact]
    public void Waiting_longer_never_turns_a_pass_into_anything_else()
    {
        Gen.Select(Gen.Int[0, 3000], Gen.Int[0, 400], Gen.Int[0, 400]).Sample((start, wait, more) =>
        {
            var workedIn = new DateOnly(2024, 1, 1).AddDays(start);
            bool Met(int days) => RawManureInterval.IsMet(workedIn, Planting(Carrot, workedIn.AddDays(days))) == true;
            return (!Met(wait) || Met(wait + more)) && Met(wait) == (wait >= 120);
        });
    }

    private static IReadOnlyList<Finding> Findings(AppliedMaterial applied, params Planting[] plantings) =>
        OrganicChecks.For(Bed(plantings) with { Applied = [applied] }, [], [], NoNeed, Rules, Today);

    private static DateOnly Date(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
