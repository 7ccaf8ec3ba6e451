using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.YearsAhead;
using SoilAdvisor.Planning.Tests.Farms;

namespace SoilAdvisor.Planning.Tests.YearsAhead;

public class StructureTests
{
    private const string Compost = "dairy-composted";

    private static readonly MaterialOffer[] Shelf = [Farm.Offer("feather-meal", 0.9m), Farm.Offer("bone-meal-steamed", 0.8m), Farm.Offer("potassium-sulfate", 0.9m), Farm.Offer(Compost, 0.03m)];

    [Fact]
    public void A_small_dressing_is_spread_as_asked_and_what_it_brings_counts()
    {
        var with = Planned(14, 2000);
        var dressing = with.StructureDressing!.Value.Value;
        Assert.Equal(2000, dressing.Rate.PoundsPerAcre, 1e-9);
        Assert.Null(dressing.LimitedBy);
        var spread = with.Applications[0];
        Assert.Equal((Compost, "structure of the soil"), (spread.Offered.Material.Id, spread.Purpose));
        Assert.NotNull(spread.Cost);

        var without = Farm.PlanOne(Bed(14), Shelf);
        foreach (var nutrient in new[] { Nutrient.AvailableP2O5, Nutrient.K2O })
        {
            Assert.Equal(Of(without, nutrient).Floor!.Value.PoundsPerAcre, Of(with, nutrient).Floor!.Value.PoundsPerAcre, 1e-9);
            var missed = with.Shortfalls.Where(s => s.Nutrient == nutrient).Sum(s => s.By.PoundsPerAcre);
            Assert.True(Of(with, nutrient).Supplied.PoundsPerAcre + missed >= Of(with, nutrient).Floor!.Value.PoundsPerAcre - 0.01);
        }

        // What the plan spreads of compost for its nutrients, it spreads of the same compost: only the rest is added.
        Assert.Equal(Spread(without, Compost), Spread(with, Compost), 0.5);
        Assert.Equal(Spread(without, "feather-meal"), Spread(with, "feather-meal"), 0.5);
    }

    [Fact]
    public void It_says_what_it_costs_in_phosphorus()
    {
        var dressing = Planned(14, 2000).StructureDressing!.Value.Value;
        var analysis = dressing.Offered.Analysis;
        Assert.Equal(2000 * analysis.Share(Nutrient.TotalP2O5), dressing.Phosphate.PoundsPerAcre, 1e-9);
        Assert.Equal(2000 * analysis.High[Nutrient.TotalP2O5], dressing.PhosphateHigh.PoundsPerAcre, 1e-9);
        var middle = (dressing.Phosphate.PoundsPerAcre + dressing.PhosphateHigh.PoundsPerAcre) / 2;

        // 20 short tons of cabbage take 30 lb P2O5; 20 lb move the test by 1 mg/kg.
        Assert.Equal(middle / 30, dressing.YearsOfRemoval!.Value, 1e-9);
        Assert.Equal(middle / 20, dressing.Rise!.Value.Likely.Value, 1e-9);
        Assert.True(dressing.Rise.Value.Low.Value < dressing.Rise.Value.Likely.Value && dressing.Rise.Value.Likely.Value < dressing.Rise.Value.High.Value);
    }

    [Theory]
    [InlineData(39_000, 1000)]
    [InlineData(38_000, 2000)]
    public void The_dressing_and_what_the_plan_adds_of_it_keep_its_largest_single_rate_together(double dressed, double left)
    {
        // Largest single rate 40,000 lb/acre; without a yield and a phosphate rate nothing else limits the dressing.
        var bed = Farm.Bed("b", Farm.Test(14, 60), "cabbage") with { Structure = new StructureAsked(Compost, MassPerArea.FromPoundsPerAcre(dressed), null) };
        var planned = Farm.PlanOne(bed, Farm.Offer(Compost, 0.03m));
        var dressing = planned.StructureDressing!.Value.Value;
        Assert.True(Spread(planned, Compost) <= 40_000 * (1 + 1e-9));
        Assert.True(dressing.Rate.PoundsPerAcre < dressed || Spread(planned, Compost) - dressing.Rate.PoundsPerAcre <= left + 1e-6);
    }

    [Fact]
    public void It_may_lay_down_no_more_than_the_crops_need_or_the_harvests_take()
    {
        // 75 mg/kg by Mehlich-3 is Optimum in Delaware: cabbage is advised 50 lb P2O5, and its harvest takes 30 lb.
        var bed = Planned(75, 40_000);
        var dressing = bed.StructureDressing!.Value.Value;
        Assert.Equal(50, dressing.PhosphateHigh.PoundsPerAcre, 1e-6);
        Assert.Equal(40_000, dressing.Asked.PoundsPerAcre, 1e-6);
        Assert.Contains("at most 50 lb/acre of total phosphate (P2O5)", dressing.LimitedBy, StringComparison.Ordinal);
        Assert.Equal(dressing.Rate.PoundsPerAcre, bed.Applications[0].Rate.PoundsPerAcre, 1e-9);
    }

    [Fact]
    public void At_the_stop_limit_there_is_none_and_the_bed_says_why()
    {
        var bed = Planned(400, 2000);
        Assert.Equal("structure-at-stop-limit", bed.StructureDressing!.Value.Reason.Code);
        Assert.Contains(bed.Refused, r => r.Pointer == "/structure");
        Assert.DoesNotContain(bed.Applications, a => a.Offered.Material.Id == Compost);
    }

    [Theory]
    [InlineData("feather-meal", "structure-not-compost")]
    [InlineData("yard-compost", "structure-material-not-offered")]
    public void A_fertilizer_is_no_dressing_and_what_is_not_listed_is_not_used(string material, string code) =>
        Assert.Equal(code, Farm.PlanOne(Bed(14) with { Structure = new StructureAsked(material, MassPerArea.FromPoundsPerAcre(2000), null) }, Shelf).StructureDressing!.Value.Reason.Code);

    [Fact]
    public void The_shelf_is_used_once_and_the_purchase_counts_the_dressing()
    {
        var plan = Farm.Plan(Farm.Request([Asking(14, 2000)], [.. Shelf.Where(o => o.Material.Id != Compost), Farm.Offer(Compost, 0.03m, 5)]));
        var bought = plan.Purchases.Single(p => p.Offered.Material.Id == Compost);
        var spread = plan.Beds[0].Applications.Where(a => a.Offered.Material.Id == Compost).ToList();
        Assert.Equal(2000 * 250 / 43560.0, spread[0].PerBed.Pounds, 1e-9);
        Assert.Equal(spread.Sum(a => a.PerBed.Pounds), bought.Needed.Pounds, 1e-9);
        Assert.Equal(bought.Needed.Pounds - 5, bought.ToBuy.Pounds, 1e-9);
    }

    private static Bed Bed(decimal p) => BedYearsTests.Yields(Farm.Bed("b", Farm.Test(p, 200), "cabbage"), 20);

    private static Bed Asking(decimal p, double pounds) => Bed(p) with { Structure = new StructureAsked(Compost, MassPerArea.FromPoundsPerAcre(pounds), null) };

    private static BedPlan Planned(decimal p, double pounds) => Farm.PlanOne(Asking(p, pounds), Shelf);

    private static NutrientBalance Of(BedPlan bed, Nutrient nutrient) => bed.Balances.Single(b => b.Nutrient == nutrient);

    private static double Spread(BedPlan bed, string id) => bed.Applications.Where(a => a.Offered.Material.Id == id).Sum(a => a.Rate.PoundsPerAcre);
}
