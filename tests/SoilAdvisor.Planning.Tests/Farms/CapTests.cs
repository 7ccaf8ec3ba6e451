using CsCheck;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Planning.Tests.Farms;

public class CapTests
{
    private const string Certifier = "limit of the certifier";

    private static MaterialOffer Capped(MaterialOffer offer, double poundsPerAcre) =>
        offer with { Most = new RateCap(MassPerArea.FromPoundsPerAcre(poundsPerAcre), Certifier, Citation.OurJudgement) };

    [Theory]
    [InlineData(-1, true)]
    [InlineData(1, false)]
    public void A_cap_just_below_the_best_rate_binds_and_is_named_and_one_just_above_does_not(double beside, bool binds)
    {
        var bed = Farm.Bed("b", Farm.Test(14, 60), "spinach");
        var free = Assert.Single(Farm.PlanOne(bed, Farm.Offer("feather-meal", 0.9m)).Applications);
        Assert.Null(free.Cap);

        var capped = Farm.PlanOne(bed, Capped(Farm.Offer("feather-meal", 0.9m), free.Rate.PoundsPerAcre + beside));

        var spread = Assert.Single(capped.Applications);
        Assert.Equal(free.Rate.PoundsPerAcre + (binds ? beside : 0), spread.Rate.PoundsPerAcre, 6);
        Assert.Equal(binds ? Certifier : null, spread.Cap?.Reason);
        Assert.Equal(binds, spread.When.EndsWith($"lb/acre: {Certifier}.", StringComparison.Ordinal));
        Assert.Equal(binds, capped.Shortfalls.Any(s => s.Nutrient == Nutrient.AvailableN));
    }

    [Fact]
    public void A_cap_counts_for_all_plantings_of_a_bed_together()
    {
        var bed = Farm.Bed("b", Farm.Test(14, 60), "spinach", "lettuce");
        var plan = Farm.PlanOne(bed, Capped(Farm.Offer("feather-meal", 0.9m), 700));
        Assert.Equal(700, plan.Applications.Sum(a => a.Rate.PoundsPerAcre), 3);
        Assert.All(plan.Applications, a => Assert.Equal(Certifier, a.Cap?.Reason));
    }

    [Fact]
    public void What_was_spread_since_the_sample_counts_against_a_cap()
    {
        var offer = Capped(Farm.Offer("feather-meal", 0.9m), 300);
        var analysis = MaterialAnalyses.For(offer.Material, null, null).Value;
        var bed = Farm.Bed("b", Farm.Test(14, 60), "spinach");
        var spread = bed with { Applied = [new AppliedMaterial(offer.Material, analysis, MassPerArea.FromPoundsPerAcre(200).On(bed.Area), new DateOnly(2026, 10, 1), null)] };
        Assert.Equal(300, Farm.PlanOne(bed, offer).Applications.Sum(a => a.Rate.PoundsPerAcre), 6);
        Assert.Equal(100, Farm.PlanOne(spread, offer).Applications.Sum(a => a.Rate.PoundsPerAcre), 6);
    }

    [Fact]
    public void A_cap_on_lime_is_the_dose_of_one_year()
    {
        var bed = Farm.Bed("b", Farm.Test(30, 180, 5.6m, 6.2m), "tomato");
        var free = Farm.PlanOne(bed, Farm.Offer("calcitic-lime", 0.1m)).Lime!.Chosen!;
        var capped = Farm.PlanOne(bed, Capped(Farm.Offer("calcitic-lime", 0.1m), free.Rate.PoundsPerAcre / 2.5)).Lime!.Chosen!;
        Assert.Equal(free.Rate.PoundsPerAcre, capped.Rate.PoundsPerAcre, 6);
        Assert.Equal(3, capped.Doses.Each.Count);
        Assert.Equal([0, 12, 24], capped.Doses.Each.Select(d => d.MonthsFrom));
        Assert.Contains(Certifier, capped.Doses.Said, StringComparison.Ordinal);
    }

    [Fact]
    public void No_plan_passes_a_cap() => Gen.Select(Gen.Int[1, 200], Gen.Int[10, 400], Gen.Int[1, 3000].Array[4], Gen.Bool).Sample(
        (p, k, most, packs) =>
        {
            string[] ids = ["feather-meal", "poultry-pellet", "bone-meal-steamed", "potassium-sulfate"];
            var shelf = ids.Select((id, i) => Capped(Farm.Offer(id, 0.5m + i), most[i]) with { Pack = packs ? UnitsNet.Mass.FromPounds(25) : null }).ToArray();
            var plan = Farm.PlanOne(Farm.Bed("b", Farm.Test(p, k), "broccoli", "spinach"), shelf);
            Assert.All(plan.Applications.GroupBy(a => a.Offered.Material.Id), m => Assert.True(
                m.Sum(a => a.Rate.PoundsPerAcre) <= most[Array.IndexOf(ids, m.Key)] + 1e-3, $"{m.Key}: {m.Sum(a => a.Rate.PoundsPerAcre)}"));
        },
        iter: 25,
        threads: 1);
}
