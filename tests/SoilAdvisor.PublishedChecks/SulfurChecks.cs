using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Acidity.Sulfur;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.PublishedChecks;

/// <summary>Elemental sulfur against what is printed of it.</summary>
public sealed class SulfurChecks
{
    // Michigan State University, elemental sulfur to reach pH 4.5, lb/acre; seen in a restatement: start pH, sand, loam, clay.
    public static TheoryData<double, SoilGroup, double> MichiganCells
    {
        get
        {
            var cells = new TheoryData<double, SoilGroup, double>();
            foreach (var (start, sand, loam, clay) in new[] { (5.0, 175, 530, 800), (5.5, 350, 1030, 1600), (6.0, 530, 1540, 2300), (6.5, 660, 2020, 3030), (7.0, 840, 2560, 3830) })
            {
                cells.Add(start, SoilGroup.Sand, sand);
                cells.Add(start, SoilGroup.Loam, loam);
                cells.Add(start, SoilGroup.Clay, clay);
            }

            return cells;
        }
    }

    [Theory]
    [MemberData(nameof(MichiganCells))]
    public void Each_cell_of_the_Michigan_table_is_the_printed_rate_to_pH_4_5(double start, SoilGroup soil, double printed)
    {
        var rule = Rule(Advice(start, 4.5, soil), "michigan-table");

        Assert.Equal(printed, rule.Low!.Value.PoundsPerAcre, 6);
    }

    [Fact]
    public void From_6_0_to_5_0_on_loam_the_published_rules_give_what_the_comparison_prints()
    {
        // Difference of two printed rows: 1540 − 530 = 1010 lb/acre. Extension network (ext-blueberry): 2 lb per 100 sq ft for one unit, 20 lb per 1000 sq ft.
        // Tennessee (ut-blueberry): 2.0 lb per 1000 sq ft for each tenth above 5.5, so 10 lb per 1000 sq ft and nothing below 5.5.
        var advice = Advice(6.0, 5.0, SoilGroup.Loam);

        Assert.Equal(1010, Rule(advice, "michigan-table").Low!.Value.PoundsPerAcre, 6);
        Assert.Equal(20, Rule(advice, "extension").Low!.Value.Amount.PoundsPer1000SquareFeet, 6);
        Assert.Equal(10, Rule(advice, "tennessee").Low!.Value.Amount.PoundsPer1000SquareFeet, 6);
        Assert.Equal(5.5m, Rule(advice, "tennessee").ToPh);
    }

    [Theory]
    [InlineData(SoilGroup.Clay, 2.0 * 10 * 4 / 3)]
    [InlineData(SoilGroup.SiltLoam, 2.0 * 10)]
    [InlineData(SoilGroup.Sand, 2.0 * 10 * 2 / 3)]
    public void Tennessee_gives_a_third_more_on_clay_and_a_third_less_on_sand(SoilGroup soil, double per1000) =>
        Assert.Equal(per1000, Rule(Advice(6.5, 5.0, soil), "tennessee").Low!.Value.Amount.PoundsPer1000SquareFeet, 6);

    [Theory]
    [InlineData(5.5, false)]
    [InlineData(5.6, true)]
    public void Tennessee_counts_nothing_at_or_below_5_5(double ph, bool counts) =>
        Assert.Equal(counts, Rule(Advice(ph, 4.5, SoilGroup.Loam), "tennessee").Low is not null);

    [Theory]
    [InlineData(6.9, false)]
    [InlineData(7.0, true)]
    [InlineData(7.5, true)]
    [InlineData(7.6, false)]
    public void The_Royal_Horticultural_Society_prints_135_to_270_grams_from_7_0_to_7_5_only(double ph, bool printed)
    {
        // 135 and 270 g/m2 are 1350 and 2700 kg/ha.
        var rule = Rule(Advice(ph, 6.5, SoilGroup.Loam), "royal-horticultural-society");

        Assert.Equal(printed, rule.Low is not null);
        Assert.True(!printed || (Math.Abs(rule.Low!.Value.Amount.KilogramsPerHectare - 1350) < 1e-6 && Math.Abs(rule.High!.Value.Amount.KilogramsPerHectare - 2700) < 1e-6));
    }

    [Theory]
    [InlineData(7.0, true)]
    [InlineData(7.1, false)]
    public void The_Michigan_table_ends_at_7_0(double ph, bool reaches) =>
        Assert.Equal(reaches, Rule(Advice(ph, 5.0, SoilGroup.Loam), "michigan-table").Low is not null);

    [Fact]
    public void Up_to_30_lb_per_1000_square_feet_go_at_once() =>
        // Sand from 6.0 to 4.5: 530 lb/acre, 12.2 lb per 1000 sq ft.
        Assert.Single(Advice(6.0, 4.5, SoilGroup.Sand).Doses);

    [Fact]
    public void Above_30_lb_per_1000_square_feet_two_thirds_go_first_and_the_rest_after_three_months()
    {
        // Clay 6.0 to 5.0: 2300 − 800 = 1500 lb/acre, 34.4 lb per 1000 sq ft.
        var advice = Advice(6.0, 5.0, SoilGroup.Clay, start: new DateOnly(2026, 4, 1));

        Assert.Equal([1000, 500], advice.Doses.Select(d => Math.Round(d.Rate.PoundsPerAcre, 6)));
        Assert.Equal(new DateOnly(2026, 7, 1), advice.Retest);
        Assert.Equal(new DateOnly(2026, 7, 1), advice.Doses[1].Date);
    }

    [Fact]
    public void Free_lime_makes_sulfur_futile_and_the_amount_is_said()
    {
        // 1 % of 2,000,000 lb is 20,000 lb of CaCO3; 100.09 / 32.06 = 3.12 lb of it for a pound of sulfur: 6,400 lb/acre, 147 lb per 1000 sq ft.
        var advice = Advice(7.5, 6.0, SoilGroup.Loam, freeLime: true);

        Assert.False(advice.Advised);
        Assert.Empty(advice.Doses);
        Assert.Equal(6400, advice.FutileBefore!.Value.PoundsPerAcre, 50.0);
        Assert.Contains("6,400 lb/acre (147 lb per 1000 sq ft)", advice.Said, StringComparison.Ordinal);
    }

    [Fact]
    public void More_acid_goals_never_need_less_sulfur()
    {
        foreach (var soil in new[] { SoilGroup.Sand, SoilGroup.Loam, SoilGroup.Clay })
        {
            var rates = new[] { 6.5, 6.0, 5.5, 5.0, 4.5 }.Select(goal => Rule(Advice(7.0, goal, soil), "michigan-table").Low!.Value).ToList();
            Assert.True(rates.Zip(rates.Skip(1)).All(p => p.Second >= p.First));
        }
    }

    [Theory]
    [InlineData(5.9, true)]
    [InlineData(6.0, false)]
    [InlineData(6.1, false)]
    public void There_is_sulfur_only_above_the_target(double target, bool some) => Assert.Equal(some, For(6.0, target, null, null, null, true) is not null);

    [Theory]
    [InlineData(6.9, 6.5, false)]
    [InlineData(7.0, 6.5, true)]
    [InlineData(6.0, 5.7, true)]
    public void Sulfur_is_advised_for_acid_soil_or_half_a_unit_and_never_below_the_target(double ph, double goal, bool advised)
    {
        // Half a unit is ours.
        var advice = Advice(ph, goal, SoilGroup.Loam);

        Assert.Equal(advised, advice.Advised);
        Assert.True(advice.Used is null || advice.Used.ToPh >= (decimal)goal);
    }

    private static SulfurRule Rule(SulfurAdvice advice, string id) => advice.Rules.Single(r => r.Id == id);

    private static SulfurAdvice Advice(double ph, double goal, SoilGroup soil, bool? freeLime = null, DateOnly? start = null) => For(ph, goal, soil, freeLime, start, true)!;

    private static SulfurAdvice? For(double ph, double goal, SoilGroup? soil, bool? freeLime, DateOnly? start, bool asked)
    {
        var target = new TargetPh((decimal)goal, null, null, Citation.OurJudgement);
        var requirement = new LimeRequirement("none-needed", LimeAmount.None, 0, "lb/acre", "calcium carbonate equivalent", Length.FromInches(6), target, (decimal)ph, [], Citation.OurJudgement);
        var test = new SoilTest("published", null, null, null, soil, freeLime, null, [], []);
        return SulfurChoice.For(requirement, test, asked, TablesUnderTest.Current.Liming, start, null, null);
    }
}
