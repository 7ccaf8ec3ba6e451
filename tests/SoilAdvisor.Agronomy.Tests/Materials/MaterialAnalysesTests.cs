using CsCheck;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using static SoilAdvisor.Agronomy.Tests.Materials.InventedMaterial;

namespace SoilAdvisor.Agronomy.Tests.Materials;

public class MaterialAnalysesTests
{
    [Fact]
    public void The_plan_counts_the_low_end_and_the_high_end_stays_beside_it()
    {
        var analysis = Analysis(Meal);

        // 4 % × 50 %, 4 % × 75 %; 3 % × 40 %, 3 % × 60 %; 2 % × 100 %.
        Assert.Equal(0.02, analysis.Share(Nutrient.AvailableN), 12);
        Assert.Equal(0.03, analysis.High[Nutrient.AvailableN], 12);
        Assert.Equal(0.012, analysis.Share(Nutrient.AvailableP2O5), 12);
        Assert.Equal(0.018, analysis.High[Nutrient.AvailableP2O5], 12);
        Assert.Equal(0.02, analysis.Share(Nutrient.K2O), 12);
    }

    [Fact]
    public void A_phosphorus_limit_uses_the_total_and_a_phosphorus_need_the_available_part()
    {
        var analysis = Analysis(Meal);

        Assert.Equal(0.03, analysis.Share(Nutrient.TotalP2O5), 12);
        Assert.True(analysis.Share(Nutrient.AvailableP2O5) < analysis.Share(Nutrient.TotalP2O5));
    }

    [Fact]
    public void Every_figure_keeps_the_citations_of_its_total_and_its_availability()
    {
        var sources = Analysis(Meal).Sources[Nutrient.AvailableN];

        Assert.Equal(["total-nitrogen", "available-nitrogen-share"], sources.Select(s => s.Locator));
    }

    [Fact]
    public void A_dry_figure_is_spread_with_the_water_in_it_and_the_moisture_is_said()
    {
        var analysis = Analysis(DryCompost);

        // 2 % of dry matter at 40 % water is 1.2 % as spread; a tenth of it comes.
        Assert.Equal(0.0012, analysis.Share(Nutrient.AvailableN), 12);
        var said = Assert.Single(analysis.Assumptions);
        Assert.Equal("moisture-from-table", said.Code);
        Assert.Equal("moisture", said.Source.Locator);
        Assert.Contains("40 % water", said.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tested_moisture_replaces_the_printed_one_without_an_assumption()
    {
        var analysis = MaterialAnalyses.For(DryCompost, null, new GrowerAnalysis(null, null, null, 60, false)).Value;

        Assert.Equal(0.004, analysis.Share(Nutrient.TotalP2O5), 12);
        Assert.Empty(analysis.Assumptions);
    }

    [Fact]
    public void A_dry_figure_without_moisture_is_refused()
    {
        var material = DryCompost with { Values = [.. DryCompost.Values.Where(v => v.Property != "moisture")] };

        Assert.Equal("moisture-missing", MaterialAnalyses.For(material, null, null).Reason.Code);
        Assert.Equal("moisture-missing", MaterialAnalyses.For(Meal, null, new GrowerAnalysis(5, null, null, null, Dry: true)).Reason.Code);
        Assert.True(MaterialAnalyses.For(Meal, null, new GrowerAnalysis(5, null, null, 10, Dry: true)).IsGiven);
    }

    [Fact]
    public void Tested_figures_override_the_tables_and_the_rest_stays()
    {
        var analysis = MaterialAnalyses.For(Meal, null, new GrowerAnalysis(8, null, null, null, false)).Value;

        Assert.Equal(0.04, analysis.Share(Nutrient.AvailableN), 12);
        Assert.Equal(0.03, analysis.Share(Nutrient.TotalP2O5), 12);
        Assert.Contains(analysis.Sources[Nutrient.AvailableN], s => s.Locator == "analysis given with the request");
    }

    [Fact]
    public void A_dry_laboratory_figure_is_turned_to_the_moist_material()
    {
        var analysis = MaterialAnalyses.For(Meal, null, new GrowerAnalysis(10, null, null, 20, Dry: true)).Value;

        // 10 % × (1 − 0.20) × 50 %.
        Assert.Equal(0.04, analysis.Share(Nutrient.AvailableN), 12);
    }

    [Fact]
    public void A_moisture_that_changes_nothing_is_said_to_change_nothing()
    {
        var analysis = MaterialAnalyses.For(Meal, null, new GrowerAnalysis(null, null, null, 20, false)).Value;

        Assert.Equal(Analysis(Meal).Share(Nutrient.AvailableN), analysis.Share(Nutrient.AvailableN));
        Assert.Equal("moisture-not-used", Assert.Single(analysis.Assumptions).Code);
    }

    [Theory]
    [InlineData(5.9, true)]
    [InlineData(6.0, true)]
    [InlineData(6.1, false)]
    public void Phosphate_rock_counts_only_up_to_its_pH(double ph, bool counts)
    {
        var analysis = Analysis(Rock, (decimal)ph);

        Assert.Equal(counts ? 0.03 : 0, analysis.Share(Nutrient.AvailableP2O5), 12);
        Assert.Equal(0.30, analysis.Share(Nutrient.TotalP2O5), 12);
        Assert.Equal(!counts, analysis.Assumptions.Any(a => a.Code == "phosphate-rock-not-counted"));
    }

    [Fact]
    public void Phosphate_rock_counts_nothing_where_the_pH_after_liming_is_not_known()
    {
        var analysis = Analysis(Rock);

        Assert.Equal(0, analysis.Share(Nutrient.AvailableP2O5));
        Assert.Contains(analysis.Assumptions, a => a.Text.Contains("not known", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(4, 0.04, 0.30)]
    [InlineData(4.1, 0.0041, 0.041)]
    public void A_label_figure_within_what_labels_guarantee_is_the_available_part_and_the_total_stays(double label, double available, double total)
    {
        var analysis = MaterialAnalyses.For(Rock, 5.5m, new GrowerAnalysis(null, (decimal)label, null, null, false)).Value;

        Assert.Equal(available, analysis.Share(Nutrient.AvailableP2O5), 12);
        Assert.Equal(total, analysis.Share(Nutrient.TotalP2O5), 12);
    }

    [Fact]
    public void A_label_guarantee_is_still_bound_by_the_pH()
    {
        var analysis = MaterialAnalyses.For(Rock, 6.5m, new GrowerAnalysis(null, 3, null, null, false)).Value;

        Assert.Equal(0, analysis.Share(Nutrient.AvailableP2O5));
        Assert.Contains(analysis.Assumptions, a => a.Code == "p2o5-taken-as-label-guarantee");
    }

    [Fact]
    public void A_material_that_takes_years_supplies_no_need_but_still_fills_the_phosphorus_limit()
    {
        var analysis = Analysis(Meal with { CountedInSeason = false });

        Assert.Equal(0, analysis.Share(Nutrient.AvailableN));
        Assert.Equal(0, analysis.Share(Nutrient.AvailableP2O5));
        Assert.Equal(0, analysis.Share(Nutrient.K2O));
        Assert.Equal(0.03, analysis.Share(Nutrient.TotalP2O5), 12);
        Assert.Contains(analysis.Assumptions, a => a.Code == "not-counted-in-season");
    }

    [Fact]
    public void A_compost_without_a_phosphate_figure_is_refused_because_no_limit_could_be_kept()
    {
        var material = DryCompost with { Values = [.. DryCompost.Values.Where(v => v.Property != "total-p2o5")] };

        Assert.Equal("material-figure-missing", MaterialAnalyses.For(material, null, null).Reason.Code);
        Assert.True(MaterialAnalyses.For(material, null, new GrowerAnalysis(null, 1, null, null, false)).IsGiven);
    }

    [Fact]
    public void Of_a_prohibited_material_nothing_is_counted_and_nothing_is_asked()
    {
        var sludge = DryCompost with { Status = OrganicStatus.Prohibited, Values = [] };

        var analysis = MaterialAnalyses.For(sludge, null, null).Value;

        Assert.Empty(analysis.Planned);
        Assert.Equal("prohibited-not-counted", Assert.Single(analysis.Assumptions).Code);
    }

    [Fact]
    public void A_missing_share_counts_nothing_and_is_said()
    {
        var analysis = Analysis(Meal with { Values = [.. Meal.Values.Where(v => v.Property != "k2o-available-share")] });

        Assert.Equal(0, analysis.Share(Nutrient.K2O));
        Assert.Contains(analysis.Assumptions, a => a.Code == "availability-unknown");
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(-0.1, false)]
    [InlineData(100, true)]
    [InlineData(100.1, false)]
    public void A_figure_outside_0_to_100_percent_is_refused(double n, bool given)
    {
        var answer = MaterialAnalyses.For(Meal, null, new GrowerAnalysis((decimal)n, null, null, null, false));

        Assert.Equal(given, answer.IsGiven);
        Assert.Equal(given ? "" : "analysis-out-of-range", answer.IsGiven ? "" : answer.Reason.Code);
    }

    [Fact]
    public void A_material_of_water_only_or_of_more_than_itself_is_refused()
    {
        Assert.Equal("analysis-out-of-range", MaterialAnalyses.For(DryCompost, null, new GrowerAnalysis(null, null, null, 100, false)).Reason.Code);
        Assert.Equal("analysis-out-of-range", MaterialAnalyses.For(Meal, null, new GrowerAnalysis(50, 40, 11, null, false)).Reason.Code);
    }

    [Fact]
    public void The_working_shows_each_step_and_changes_no_bit()
    {
        Gen.Select(Gen.Int[0, 1000], Gen.Int[0, 100], Gen.Int[0, 99]).Sample((n, share, water) =>
        {
            var material = DryCompost with
            {
                Values = [Figure("total-nitrogen", n / 10m), Figure("total-p2o5", 1), Figure("k2o", 1), Figure("available-nitrogen-share", share), Figure("moisture", water)],
            };
            var sheet = new WorkingSheet();

            var (silent, shown) = (MaterialAnalyses.For(material, null, null).Value, MaterialAnalyses.For(material, null, null, sheet).Value);

            return silent.Planned.All(p => BitConverter.DoubleToInt64Bits(p.Value) == BitConverter.DoubleToInt64Bits(shown.Planned[p.Key]))
                && sheet.Lines.Any(l => l.Formula == "dry-to-as-is") && sheet.Lines.Any(l => l.Formula == "plant-available-nitrogen-of-total");
        });
    }

    [Fact]
    public void What_is_planned_never_exceeds_the_high_end()
    {
        Gen.Select(Gen.Int[0, 50], Gen.Int[0, 90], Gen.Int[0, 10], Gen.Int[0, 60]).Sample((total, share, more, water) =>
        {
            var material = DryCompost with
            {
                Values =
                [
                    Figure("total-nitrogen", total), Figure("total-p2o5", total), Figure("k2o", total), Figure("moisture", water, low: water / 2m, high: water),
                    Figure("available-nitrogen-share", share, low: share, high: share + more), Figure("available-p2o5-share", share), Figure("k2o-available-share", share),
                ],
            };
            var analysis = MaterialAnalyses.For(material, null, null).Value;
            return analysis.Planned.All(p => p.Value <= analysis.High[p.Key] + 1e-12);
        });
    }
}
