using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Materials;

/// <summary>A laboratory's own figures of a compost or manure, by form and basis.</summary>
public sealed class TestedFiguresTests
{
    private static readonly GrowerAnalysis Empty = new(null, null, null, null, false);

    [Fact]
    public void Phosphorus_and_potassium_as_elements_become_oxides_on_a_line_of_the_working()
    {
        // Oregon State University prints P × 2.29 and K × 1.20; these are the unrounded ratios of atomic weights.
        var sheet = new WorkingSheet();
        var analysis = MaterialAnalyses.For(InventedMaterial.Meal, null, Empty with { Phosphorus = 1, Potassium = 1 }, sheet).Value;

        Assert.Equal(0.022913, analysis.Share(Nutrient.TotalP2O5), 5);
        Assert.Equal(0.012046, analysis.Share(Nutrient.K2O), 5);
        Assert.Contains(sheet.Lines, l => l.Formula == "phosphate-content-of-phosphorus");
        Assert.Contains(sheet.Lines, l => l.Formula == "potash-content-of-potassium");
    }

    [Fact]
    public void The_same_percent_as_element_and_as_oxide_is_not_the_same_amount()
    {
        var element = MaterialAnalyses.For(InventedMaterial.Meal, null, Empty with { Phosphorus = 2 }).Value;
        var oxide = MaterialAnalyses.For(InventedMaterial.Meal, null, Empty with { P2O5 = 2 }).Value;

        Assert.Equal(2.2913, element.Share(Nutrient.TotalP2O5) / oxide.Share(Nutrient.TotalP2O5), 3);
    }

    [Fact]
    public void Both_forms_at_once_are_refused()
    {
        Assert.Equal("analysis-form-twice", MaterialAnalyses.For(InventedMaterial.Meal, null, Empty with { P2O5 = 2, Phosphorus = 1 }).Reason.Code);
        Assert.Equal("analysis-form-twice", MaterialAnalyses.For(InventedMaterial.Meal, null, Empty with { K2O = 2, Potassium = 1 }).Reason.Code);
    }

    [Fact]
    public void An_element_is_never_read_as_a_guarantee_of_the_label()
    {
        // 3 % P2O5 lies where labels of the invented rock guarantee the available part; 3 % P is a laboratory's total.
        var label = MaterialAnalyses.For(InventedMaterial.Rock, 5.5m, Empty with { P2O5 = 3 }).Value;
        var laboratory = MaterialAnalyses.For(InventedMaterial.Rock, 5.5m, Empty with { Phosphorus = 3 }).Value;

        Assert.Contains(label.Assumptions, a => a.Code == "p2o5-taken-as-label-guarantee");
        Assert.DoesNotContain(laboratory.Assumptions, a => a.Code == "p2o5-taken-as-label-guarantee");
        Assert.Equal(0.03 * 2.2913, laboratory.Share(Nutrient.TotalP2O5), 4);
    }

    [Fact]
    public void Calcium_and_its_like_follow_the_basis_of_the_test()
    {
        var dry = MaterialAnalyses.For(InventedMaterial.DryCompost, null, Empty with { Calcium = 2, Magnesium = 0.5m, Sulfur = 0.4m, Sodium = 0.2m, Moisture = 50, Dry = true }).Value;
        var moist = MaterialAnalyses.For(InventedMaterial.DryCompost, null, Empty with { Calcium = 2, Magnesium = 0.5m, Sulfur = 0.4m, Sodium = 0.2m, Moisture = 50 }).Value;

        Assert.Equal([0.01, 0.0025, 0.002, 0.001], new[] { Nutrient.Ca, Nutrient.Mg, Nutrient.S, Nutrient.Na }.Select(n => Math.Round(dry.Share(n), 9)));
        Assert.Equal([0.02, 0.005, 0.004, 0.002], new[] { Nutrient.Ca, Nutrient.Mg, Nutrient.S, Nutrient.Na }.Select(n => Math.Round(moist.Share(n), 9)));
    }

    [Fact]
    public void Carbon_follows_from_the_ratio_where_it_is_not_given()
    {
        Assert.Equal(0.28, MaterialAnalyses.For(InventedMaterial.Meal, null, Empty with { N = 2, CarbonToNitrogen = 14 }).Value.Share(Nutrient.C), 9);
        Assert.Equal(0.3, MaterialAnalyses.For(InventedMaterial.Meal, null, Empty with { N = 2, CarbonToNitrogen = 14, Carbon = 30 }).Value.Share(Nutrient.C), 9);
        Assert.Equal("analysis-out-of-range", MaterialAnalyses.For(InventedMaterial.Meal, null, Empty with { N = 2, CarbonToNitrogen = 0 }).Reason.Code);
    }

    [Fact]
    public void The_laboratory_and_its_day_are_the_source_of_the_figure()
    {
        var analysis = MaterialAnalyses.For(InventedMaterial.Meal, null, Empty with { N = 5, From = "Invented laboratory", Date = new DateOnly(2026, 10, 2) }).Value;

        Assert.Equal("analysis by Invented laboratory of 2 October 2026, given with the request", analysis.Sources[Nutrient.AvailableN][0].Locator);
    }

    [Theory]
    [InlineData(60, 40, true)]
    [InlineData(60, 40.1, false)]
    public void Figures_of_one_material_add_up_to_no_more_than_itself(double carbon, double calcium, bool given) =>
        Assert.Equal(given, MaterialAnalyses.For(InventedMaterial.Meal, null, Empty with { Carbon = (decimal)carbon, Calcium = (decimal)calcium }).IsGiven);
}
