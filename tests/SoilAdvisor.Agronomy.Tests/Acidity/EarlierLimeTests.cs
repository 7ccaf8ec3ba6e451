using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Acidity.Stones;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Tests.Acidity;

public class EarlierLimeTests
{
    private static readonly Citation Source = new("invented", null, Evidence.Seen);

    // North Carolina buffer page (ncda-bufftab): lime of the past year loses 8 % a month on mineral, 16 % on mineral-organic and organic soils.
    private static readonly LimeMethod WithRule = InventedLime.NorthCarolina with
    {
        Parameters = [.. InventedLime.NorthCarolina.Parameters, new RateParameter("residual-loss-mineral", "loss", 8, "% per month", Source), new RateParameter("residual-loss-organic", "loss", 16, "% per month", Source)],
    };

    [Theory]
    [InlineData(null, 1600 - 600)] // 1000 × (1 − 0.08 × 5) = 600
    [InlineData(SoilGroup.Organic, 1600 - 200)] // 1000 × (1 − 0.16 × 5) = 200
    public void Lime_of_five_months_before_is_taken_off_by_the_rule_of_North_Carolina(SoilGroup? soil, double left)
    {
        // Half a ton, 5 months earlier, on a requirement of 0.80 ton/acre.
        var lessened = Less(WithRule, new DateOnly(2026, 5, 1), 1000, new DateOnly(2026, 10, 1), soil);

        Assert.Equal(left, lessened.Rate.PoundsPerAcre, 6);
        Assert.Contains(lessened.Assumptions, a => a.Code == "recent-lime-taken-off");
        Assert.DoesNotContain(lessened.Assumptions, a => a.Code == "recent-lime");
    }

    [Theory]
    [InlineData("2025-10-01", "recent-lime-in-test")] // 12 months
    [InlineData("2025-10-02", "recent-lime-taken-off")] // 11 months and some days
    public void After_a_year_the_test_shows_the_lime(string spread, string code) =>
        Assert.Contains(Less(WithRule, DateOnly.ParseExact(spread, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), 1000, new DateOnly(2026, 10, 1), null).Assumptions, a => a.Code == code);

    [Fact]
    public void A_method_without_a_rule_takes_nothing_off_and_says_so()
    {
        var same = Less(InventedLime.Table, new DateOnly(2026, 5, 1), 1000, new DateOnly(2026, 10, 1), null);

        Assert.Equal(1600, same.Rate.PoundsPerAcre, 9);
        Assert.Contains(same.Assumptions, a => a.Code == "recent-lime-not-credited");
    }

    [Theory]
    [InlineData("2026-10-01")]
    [InlineData("2026-11-01")]
    public void Lime_spread_on_or_after_the_day_of_sampling_is_taken_off_whole(string spread) =>
        Assert.Equal(600, Less(InventedLime.Table, DateOnly.ParseExact(spread, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), 1000, new DateOnly(2026, 10, 1), null).Rate.PoundsPerAcre, 6);

    [Fact]
    public void More_earlier_lime_than_is_needed_leaves_none_to_spread() =>
        Assert.True(Less(InventedLime.Table, new DateOnly(2026, 11, 1), 5000, new DateOnly(2026, 10, 1), null).Lime.IsZero);

    [Fact]
    public void Lime_without_an_amount_is_said_and_not_guessed()
    {
        var same = Less(WithRule, new DateOnly(2026, 5, 1), null, new DateOnly(2026, 10, 1), null);

        Assert.Equal(1600, same.Rate.PoundsPerAcre, 9);
        Assert.Contains(same.Assumptions, a => a.Code == "recent-lime-amount-unknown");
    }

    [Theory]
    [InlineData(0.9, 1600 * 0.9 / 1.3236)]
    [InlineData(1.3, 1600 * 1.3 / 1.3236)]
    [InlineData(1.3236, 1600.0)]
    [InlineData(1.4, 1600.0)]
    public void A_light_bed_gets_the_part_of_its_mass_and_a_dense_one_no_more(double density, double expected)
    {
        // 2,000,000 lb in 6.67 in of an acre is 1.3236 g/cm3.
        var tables = InventedGround.Tables() with { Figures = [new LimingFigure("mineral-soil", "bulk-density", 1.3236m, null, null, "g/cm3", Source, null)] };
        var test = InventedLime.Soil(5.4m) with { BulkDensity = (decimal)density };

        Assert.Equal(expected, LightBed.For(Requirement(), test, InventedLime.Pennsylvania, tables, null).Rate.PoundsPerAcre, 6);
    }

    [Fact]
    public void A_buffer_that_counts_by_volume_needs_no_density()
    {
        var tables = InventedGround.Tables() with { Figures = [new LimingFigure("mineral-soil", "bulk-density", 1.3236m, null, null, "g/cm3", Source, null)] };
        var same = LightBed.For(Requirement(), InventedLime.Soil(5.4m) with { BulkDensity = 0.9m }, InventedLime.NorthCarolina, tables, null);

        Assert.Equal(1600, same.Rate.PoundsPerAcre, 9);
        Assert.Contains(same.Assumptions, a => a.Code == "bulk-density-not-used");
    }

    private static LimeRequirement Less(LimeMethod method, DateOnly spread, double? pounds, DateOnly sampled, SoilGroup? soil) => RecentLimeCredit.Less(
        Requirement(),
        [new EarlierLime("Limestone", pounds is { } amount ? Rate<CalciumCarbonate>.FromPoundsPerAcre(amount) : null, spread)],
        InventedLime.Soil(5.4m) with { Sampled = sampled, SoilGroup = soil },
        method,
        null);

    private static LimeRequirement Requirement() => new(
        "invented", new LimeAmount.NeutralisingValue(Rate<CalciumCarbonate>.FromPoundsPerAcre(1600)), 0.8m, "ton/acre", "agricultural limestone", Length.FromInches(8), InventedLime.Target(6.0m), 5.4m,
        [new Assumption("recent-lime", "No lime of the past year is taken off.", Source)], Source);
}
