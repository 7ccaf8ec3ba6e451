using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Materials.Metals;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Materials;

/// <summary>Invented limits on an invented compost. Copper: ceiling 1000, no load counted to 200 mg/kg, 2 kg/ha a year.</summary>
public sealed class MetalCheckTests
{
    private static readonly Citation Page = new("invented", "metals", Evidence.Seen);

    private static readonly MetalRule Compost = Rule("compost-and-manure",
        Limit(Metal.Cu, MetalLimitKind.Ceiling, 1000, "mg/kg"),
        Limit(Metal.Cu, MetalLimitKind.NoLoadCounted, 200, "mg/kg"),
        Limit(Metal.Cu, MetalLimitKind.Annual, 2, "kg/ha"),
        Limit(Metal.Zn, MetalLimitKind.Cumulative, 90, "kg/ha", years: 45));

    [Theory]
    [InlineData(1000, false)]
    [InlineData(1000.5, true)]
    public void Above_the_ceiling_a_material_is_forbidden_and_at_it_not(double copper, bool forbidden) =>
        Assert.Equal(forbidden, MetalCheck.Of(InventedMaterial.DryCompost, Tested(Metal.Cu, copper), Compost).Forbids);

    [Theory]
    [InlineData(200, 0)]
    [InlineData(201, 1)]
    public void A_load_is_counted_only_above_the_content_that_needs_none(double copper, int caps) =>
        Assert.Equal(caps, MetalCheck.Of(InventedMaterial.DryCompost, Tested(Metal.Cu, copper), Compost).Caps.Count);

    [Fact]
    public void A_limit_in_a_year_becomes_the_largest_rate_of_the_moist_material()
    {
        // 2 kg/ha at 500 mg/kg is 4 t/ha of dry matter; at 20 % water that is 5 t/ha as spread.
        var cap = Assert.Single(MetalCheck.Of(InventedMaterial.DryCompost, Tested(Metal.Cu, 500, moisture: 20), Compost).Caps);

        Assert.Equal(5000, cap.Most.KilogramsPerHectare, 6);
        Assert.Equal(Page, cap.Source);
    }

    [Fact]
    public void Without_a_moisture_of_its_own_the_driest_published_one_is_taken()
    {
        // The invented compost is published at 30 to 50 % water.
        var cap = Assert.Single(MetalCheck.Of(InventedMaterial.DryCompost, Tested(Metal.Cu, 500), Compost).Caps);

        Assert.Equal(4000 / 0.7, cap.Most.KilogramsPerHectare, 6);
    }

    [Fact]
    public void A_limit_over_years_is_shared_among_them()
    {
        // 90 kg/ha over 45 years is 2 kg/ha a year; at 1000 mg/kg, dry, 2 t/ha.
        var cap = Assert.Single(MetalCheck.Of(InventedMaterial.DryCompost, Tested(Metal.Zn, 1000, moisture: 0), Compost).Caps);

        Assert.Equal(2000, cap.Most.KilogramsPerHectare, 6);
    }

    [Theory]
    [InlineData(3, 60, false)]
    [InlineData(3, 60.5, true)]
    [InlineData(8, 80, false)]
    [InlineData(8, 80.5, true)]
    public void A_label_limit_rises_with_its_phosphate_from_a_least_percent(double phosphate, double cadmium, bool forbidden)
    {
        // 10 mg/kg for each percent of P2O5, multiplied by 6 at least.
        var rule = Rule("fertiliser", Limit(Metal.Cd, MetalLimitKind.ForEachPercentPhosphate, 10, "mg/kg", least: 6));
        var tested = Tested(Metal.Cd, cadmium) with { P2O5 = (decimal)phosphate };

        Assert.Equal(forbidden, MetalCheck.Of(InventedMaterial.Rock, tested, rule).Forbids);
    }

    [Fact]
    public void No_rule_is_ever_taken_for_granted()
    {
        var unnamed = MetalCheck.Of(InventedMaterial.DryCompost, Tested(Metal.Cu, 5000), null);
        var misfit = MetalCheck.Of(InventedMaterial.Rock, Tested(Metal.Cu, 5000), Compost);

        Assert.All(new[] { unnamed, misfit }, v => Assert.True(v is { Forbids: false, Caps.Count: 0, Findings.Count: 1 }));
        Assert.Contains("name the one that holds for you", unnamed.Findings[0].Text, StringComparison.Ordinal);
        Assert.Contains("made for composts and manures", misfit.Findings[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_test_nothing_is_said() => Assert.Empty(MetalCheck.Of(InventedMaterial.DryCompost, null, Compost).Findings);

    [Theory]
    [InlineData("1:5", 5.0, "At or below")]
    [InlineData("1:5", 5.1, "Above 5 dS/m")]
    [InlineData("saturated-paste", 9.0, "No published limit")]
    public void Salts_are_held_against_a_limit_in_the_same_extract_only_and_never_give_a_rate(string extract, double reading, string words)
    {
        var tested = new GrowerAnalysis(null, null, null, null, false) { Salt = new TestedSalt(Conductivity.FromDecisiemensPerMetre(reading), extract) };

        var finding = Assert.Single(SaltCheck.Of(InventedMaterial.DryCompost, tested, [new SaltLimit("1:5", Conductivity.FromDecisiemensPerMetre(5), Page)]));

        Assert.StartsWith(words, finding.Text, StringComparison.Ordinal);
        Assert.False(finding.Forbids);
    }

    private static GrowerAnalysis Tested(Metal metal, double content, decimal? moisture = null) =>
        new(null, null, null, moisture, false) { Metals = new Dictionary<Metal, MetalContent> { [metal] = MetalContent.FromMilligramsPerKilogramDry(content) } };

    private static MetalRule Rule(string covers, params MetalLimit[] limits) => new("invented", "Invented rule", "nowhere", covers, limits, Page, null);

    private static MetalLimit Limit(Metal metal, MetalLimitKind kind, decimal value, string unit, int? years = null, decimal? least = null) => new(metal, kind, value, unit, years, least, Page);
}
