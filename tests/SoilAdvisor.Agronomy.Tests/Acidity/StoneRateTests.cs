using CsCheck;
using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Acidity.Stones;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Tests.Materials;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Tests.Acidity;

public class StoneRateTests
{
    private static readonly LimeIndex Iowa = InventedGround.Index("iowa-ecce", "lime-ecce-iowa", false, true, "lb/ton", 2000, EffectiveLimeIndex.IowaEcce);
    private static readonly LimeIndex Missouri = InventedGround.Index("missouri-enm", "lime-enm-missouri", true, false, "lb/ton", 800, EffectiveLimeIndex.MissouriEnm);
    private static readonly LimeIndex NewYork = InventedGround.Index("new-york-env", "lime-env-new-york", false, false, "%", 100, EffectiveLimeIndex.NewYorkEnv);
    private static readonly ISieveAnalysis Sieves = CumulativeSieves.Of([(4, 100), (8, 90), (20, 80), (40, 70), (60, 55), (100, 40)]).Value;

    [Fact]
    public void Effective_lime_is_divided_by_the_score_and_never_by_the_neutralising_value_again()
    {
        // 1000 lb/acre of effective lime; Iowa: fineness 10 + 27 + 33 = 70, 0.70 × 0.92 × 0.98 = 0.63112; 1000 / 0.63112 = 1584.49.
        var rate = Rate(Effective(1000, EffectiveLimeIndex.IowaEcce), Label(92, Sieves, moisture: 2), Iowa);

        Assert.Equal(1000 / 0.63112, rate.Rate.PoundsPerAcre, 6);
        Assert.Equal(1262.24, rate.Effective!.Score, 6);
        Assert.Contains("not taken again", rate.Said, StringComparison.Ordinal);
    }

    [Fact]
    public void Effective_lime_without_a_score_stays_as_it_is_and_says_so()
    {
        var rate = Rate(Effective(1000, EffectiveLimeIndex.OregonLimeScore), Label(80, null), Iowa);

        Assert.Equal(1000, rate.Rate.PoundsPerAcre, 9);
        Assert.Null(rate.Effective);
        Assert.Equal("stone-score-unknown", Assert.Single(rate.Noticed).Code);
    }

    [Fact]
    public void One_index_never_scores_for_another()
    {
        var rate = Rate(Effective(1000, EffectiveLimeIndex.NewYorkEnv), Label(92, Sieves), Iowa);

        Assert.Null(rate.Effective);
        Assert.Equal(1000, rate.Rate.PoundsPerAcre, 9);
    }

    [Fact]
    public void The_score_on_the_label_goes_before_our_own()
    {
        var label = Label(92, Sieves) with { Score = new LabelScore("iowa-ecce", 1000) };

        Assert.Equal(2000, Rate(Effective(1000, EffectiveLimeIndex.IowaEcce), label, Iowa).Rate.PoundsPerAcre, 9);
    }

    [Fact]
    public void Missouri_needs_three_tons_for_1200_at_400_a_ton()
    {
        // University of Missouri Extension column (mo-miller): 1200 ENM needed, lime at 400 ENM a ton, 3 ton/acre. ENM counts calcium: 2.5 lb of limestone each.
        var label = Label(90, null) with { Score = new LabelScore("missouri-enm", 400) };

        Assert.Equal(6000, Rate(Effective(1200 * 2.5, EffectiveLimeIndex.MissouriEnm), label, Missouri).Rate.PoundsPerAcre, 9);
    }

    [Fact]
    public void A_requirement_in_calcium_carbonate_is_divided_by_the_neutralising_value_which_is_not_capped()
    {
        Assert.Equal(2000, Rate(Pure(1800), Label(90, null), Iowa).Rate.PoundsPerAcre, 9);
        Assert.Equal(1800 / 1.08, Rate(Pure(1800), Label(108, null), Iowa).Rate.PoundsPerAcre, 9);
    }

    [Fact]
    public void A_table_is_met_by_the_index_of_its_own_publication()
    {
        // The requirement's source and the index's are one publication, as in Iowa.
        var own = Iowa with { Source = InventedMaterial.Source };

        Assert.Equal(1000 / 0.63112, Rate(Pure(1000), Label(92, Sieves, moisture: 2), own).Rate.PoundsPerAcre, 6);
    }

    [Fact]
    public void Tri_state_rates_for_90_percent_lime_become_stone_by_090_over_its_value()
    {
        // Tri-State 1995: rate × 0.90 / neutralising value. The basis makes it pure lime first, which is the same.
        var printed = MassPerArea.FromPoundsPerAcre(4000);
        var byFormula = StoneFormulas.ByStatedValue.Of((printed, MassShare.FromPercent(90), MassShare.FromPercent(80)));
        var byBasis = LimeBasis.Read("agricultural limestone, CCE 90").Value.Of(printed);

        Assert.Equal(4500, byFormula.PoundsPerAcre, 9);
        Assert.Equal(4500, Rate(byBasis, Label(80, null), Iowa).Rate.PoundsPerAcre, 6);
    }

    [Fact]
    public void More_moisture_never_needs_less_where_it_counts_and_changes_nothing_where_it_does_not()
    {
        Gen.Select(Gen.Int[0, 40], Gen.Int[0, 40]).Sample((water, more) =>
            Rate(Effective(1000, EffectiveLimeIndex.IowaEcce), Label(92, Sieves, water + more), Iowa).Rate >= Rate(Effective(1000, EffectiveLimeIndex.IowaEcce), Label(92, Sieves, water), Iowa).Rate
            && Rate(Effective(1000, EffectiveLimeIndex.NewYorkEnv), Label(92, Sieves, water), NewYork).Rate == Rate(Effective(1000, EffectiveLimeIndex.NewYorkEnv), Label(92, Sieves), NewYork).Rate);
    }

    [Fact]
    public void A_finer_or_stronger_stone_never_needs_more()
    {
        Gen.Select(Gen.Int[1, 60], Gen.Int[0, 39], Gen.Int[60, 110], Gen.Int[0, 20]).Sample((fine, finer, value, stronger) =>
            Of(fine + finer, value + stronger) <= Of(fine, value));

        static MassPerArea Of(int through60, int value) =>
            Rate(Effective(1000, EffectiveLimeIndex.IowaEcce), Label(value, CumulativeSieves.Of([(4, 100), (8, 100), (60, through60)]).Value), Iowa).Rate;
    }

    [Fact]
    public void A_sieve_that_the_index_needs_is_asked_for()
    {
        var answer = StoneQuality.Of(Iowa, MassShare.FromPercent(90), CumulativeSieves.Of([(8, 90), (60, 55)]).Value, null, Origin.Unstated);

        Assert.Equal("sieve-missing", answer.Reason.Code);
        Assert.Contains("sieve 4", answer.Reason.Message, StringComparison.Ordinal);
    }

    private static StoneLabel Label(decimal value, ISieveAnalysis? sieves, decimal? moisture = null) => new() { NeutralisingValue = value, Sieves = sieves, Moisture = moisture };

    private static LimeAmount Effective(double pounds, EffectiveLimeIndex index) => new LimeAmount.Effective(Rate<EffectiveLime>.FromPoundsPerAcre(pounds), index);

    private static LimeAmount Pure(double pounds) => new LimeAmount.NeutralisingValue(Rate<CalciumCarbonate>.FromPoundsPerAcre(pounds));

    private static StoneRate Rate(LimeAmount lime, StoneLabel label, LimeIndex index)
    {
        var material = InventedMaterial.Of("stone", "lime", InventedMaterial.Figure("neutralising-value", 50, "% CaCO3"), InventedMaterial.Figure("largest-single-rate", 4356, "lb/acre"), InventedMaterial.Figure("wait-before-sowing", 0, "days"));
        var analysis = MaterialAnalyses.For(material, null, new GrowerAnalysis(null, null, null, null, false) { Stone = label }).Value;
        var offered = OfferedMaterials.For(material, analysis, null, null, null, true).Value;
        var requirement = new LimeRequirement("invented", lime, 0, "lb/acre", "invented basis", Length.FromInches(6), InventedLime.Target(6.5m), 6.0m, [], InventedMaterial.Source);
        return StoneRates.For(requirement, offered, InventedGround.Tables(index), 0, null);
    }
}
