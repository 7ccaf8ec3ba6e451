using SoilAdvisor.Agronomy.Sampling;

namespace SoilAdvisor.Agronomy.Tests.Sampling;

public sealed class CompositesTests
{
    private static readonly SampledBed Bed = new("1", "loam", ["cabbage", "oats"], ["compost 10 t/acre"], GrowingSite.Field);

    [Fact]
    public void Beds_that_agree_in_everything_share_a_composite()
    {
        var plan = Composites.For([Bed, Bed with { Id = "2", Soil = " Loam ", CropHistory = ["Oats", "cabbage"] }]);

        Assert.Equal(["1", "2"], Assert.Single(plan.Composites));
        Assert.Empty(plan.Apart);
        Assert.Equal("composite-rule", Assert.Single(plan.Assumptions).Code);
    }

    [Fact]
    public void Each_pair_that_may_not_is_named_with_every_reason()
    {
        var plan = Composites.For([Bed, new SampledBed("2", "sandy loam", ["tomato"], [], GrowingSite.HighTunnel)]);

        Assert.Equal(2, plan.Composites.Count);
        Assert.Equal(
            [
                "2 lies under a high tunnel, the other in the open.",
                "The soil differs: loam (1); sandy loam (2).",
                "The crop history differs: cabbage, oats (1); tomato (2).",
                "The history of amendments differs: compost 10 t/acre (1); none (2).",
            ],
            Assert.Single(plan.Apart).Reasons);
    }

    [Fact]
    public void What_is_not_stated_keeps_beds_apart_and_is_asked_for()
    {
        var plan = Composites.For([Bed with { Soil = null }, Bed with { Id = "2" }, Bed with { Id = "3", Soil = null }]);

        Assert.Equal(3, plan.Composites.Count);
        Assert.Equal(["The soil of 1 is not stated.", "The soil of 1 and 3 is not stated.", "The soil of 3 is not stated."], plan.Apart.SelectMany(p => p.Reasons));
    }

    [Fact]
    public void A_site_that_is_not_stated_is_taken_as_the_open_and_said()
    {
        var plan = Composites.For([Bed, Bed with { Id = "2", Site = null }, Bed with { Id = "3", Site = GrowingSite.HighTunnel }]);

        Assert.Equal([["1", "2"], ["3"]], plan.Composites);
        Assert.Contains(plan.Assumptions, a => a.Code == "site-taken-as-field" && a.Text.Contains("open: 2.", StringComparison.Ordinal));
    }

    [Fact]
    public void Order_of_beds_changes_no_group()
    {
        SampledBed[] beds = [Bed, Bed with { Id = "2", Soil = "clay" }, Bed with { Id = "3" }, Bed with { Id = "4", Soil = "clay" }];

        var one = Composites.For(beds).Composites.Select(c => string.Join(',', c.Order())).Order();
        var other = Composites.For([.. beds.Reverse()]).Composites.Select(c => string.Join(',', c.Order())).Order();

        Assert.Equal(one, other);
        Assert.Equal(["1,3", "2,4"], one);
    }
}
