using CsCheck;
using SoilAdvisor.Agronomy.FieldWork;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Materials.Metals;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.YearsAhead;
using SoilAdvisor.Planning.Tests.Farms;
using UnitsNet;

namespace SoilAdvisor.Planning.Tests.FieldWork;

/// <summary>Carrying a plan out: laws that hold for any farm, and the order of the work.</summary>
public sealed class FieldWorkTests
{
    private static readonly string[] Crops = ["cabbage", "lettuce", "carrot", "tomato"];

    private static readonly string[] Shelf = ["feather-meal", "bone-meal-steamed", "potassium-sulfate", "poultry-pellet", "dolomitic-lime", "langbeinite"];

    [Fact]
    public void What_is_measured_out_passes_no_ceiling_and_no_largest_rate() =>
        Gen.Select(Gen.Int[5, 60], Gen.Int[40, 250], Gen.Int[20, 900], Gen.Double[0.02, 3], Gen.Bool, Gen.Int[0, 3].Select(i => Crops[i])).Sample(
            (p, k, feet, scaleMark, scoop, crop) =>
            {
                var bed = Farm.Bed("b", Farm.Test(p, k, 5.8m, 6.2m), crop) with { Area = Area.FromSquareFeet(feet) };
                var plan = Farm.Plan(Farm.Request([bed], [.. Shelf.Select(m => Farm.Offer(m, 0.5m))]) with
                {
                    Measures = FieldMeasures.Of(Volume.FromUsGallons(5), scoop ? Volume.FromUsQuarts(1) : null, Mass.FromPounds(scaleMark), null, null),
                });
                if (plan.FieldWork is not { } work)
                {
                    return;
                }

                var measured = plan.Beds[0].Applications
                    .Select(a => (Application: a, Rate: MassPerArea.Of(work.Passes.Where(x => x.Material.Id == a.Offered.Material.Id).SelectMany(x => x.Beds).Single(b => b.PlantingIndex == a.PlantingIndex).Amount.Measured, bed.Area)))
                    .ToList();
                Assert.All(measured, m => Assert.True(m.Rate.PoundsPerAcre <= m.Application.Offered.LargestSingleRate.PoundsPerAcre * (1 + 1e-6), m.Application.Offered.Material.Id));
                foreach (var balance in plan.Beds[0].Balances.Where(b => b.Ceiling is not null))
                {
                    var change = measured.Sum(m => (m.Rate - m.Application.Rate).PoundsPerAcre * m.Application.Offered.Analysis.Share(balance.Nutrient));
                    var room = Math.Max(0, (balance.Ceiling!.Value - balance.Supplied).PoundsPerAcre);
                    Assert.True(change <= room + 1e-3, $"{balance.Nutrient}: {change} lb/acre more, room for {room}");
                }

                // Lime is never measured above the plan.
                Assert.All(work.Passes.SelectMany(x => x.Beds).Where(b => b.PlantingIndex is null), b => Assert.True(b.Amount.Measured <= b.Amount.Planned * (1 + 1e-9)));
            },
            iter: 60,
            threads: 1);

    [Fact]
    public void All_beds_together_never_take_more_than_the_farm_has()
    {
        var beds = Enumerable.Range(0, 9).Select(i => Farm.Bed($"b{i}", Farm.Test(12 + i, 90 + (7 * i), id: $"s{i}"), "cabbage")).ToList();
        var packs = Farm.Offer("feather-meal", 0.9m) with { Pack = Mass.FromPounds(10) };
        var plan = Farm.Plan(Farm.Request(beds, packs, Farm.Offer("bone-meal-steamed", 0.9m, 40), Farm.Offer("potassium-sulfate", 1.1m, 30)));

        Assert.All(plan.Purchases.Where(p => p.Packs is not null || p.ToBuy.Kilograms == 0), purchase =>
        {
            var carried = plan.FieldWork!.Passes.Where(x => x.Material.Id == purchase.Offered.Material.Id).Sum(x => x.Measured.Pounds);
            Assert.True(carried <= ((purchase.Offered.OnHand ?? default) + purchase.ToBuy).Pounds + 1e-6, purchase.Offered.Material.Id);
        });
        Assert.Contains(plan.Purchases, p => p.Packs > 0);
    }

    [Fact]
    public void Lime_goes_first_and_fresh_manure_never_on_the_same_bed_that_day()
    {
        var plan = Farm.Plan(Farm.Request([Farm.Bed("b", Farm.Test(12, 90, 5.6m, 6.1m), "cabbage")], [.. Shelf.Select(m => Farm.Offer(m, 0.5m)), Farm.Offer("dairy-fresh", 0.01m)]));
        var passes = plan.FieldWork!.Passes;

        Assert.Equal("dolomitic-lime", passes[0].Material.Id);
        Assert.Contains("never in one pass with manure", Assert.Single(passes[0].Rules), StringComparison.Ordinal);
        Assert.True(passes[0].By <= passes[1].By);
        Assert.DoesNotContain(passes, x => x.Material.Manure == ManureKind.Raw);
        Assert.Equal(Enumerable.Range(1, passes.Count), passes.Select(x => x.Order));
    }

    [Fact]
    public void What_falls_due_within_a_week_is_one_round_and_after_a_week_another()
    {
        var (near, far) = (RoundsOf(6), RoundsOf(7));

        Assert.Single(near.Distinct());
        Assert.Equal(2, far.Distinct().Count());
    }

    [Fact]
    public void Beds_of_one_need_share_a_batch_and_no_bed_gets_more_of_anything_than_planned()
    {
        var test = Farm.Test(12, 60);
        var beds = new[] { 100.0, 250, 333 }.Select((feet, i) => Farm.Bed($"b{i}", test, "cabbage") with { Area = Area.FromSquareFeet(feet) }).ToList();
        var plan = Farm.Plan(Farm.Request(beds, Farm.Offer("feather-meal", 0.9m), Farm.Offer("bone-meal-steamed", 0.9m), Farm.Offer("potassium-sulfate", 1.1m)));

        var batch = Assert.Single(plan.FieldWork!.Mixes);
        Assert.Equal(["b0", "b1", "b2"], batch.Portions.Select(p => p.Bed));
        Assert.True(batch.Parts.Count >= 2);
        foreach (var (portion, bed) in batch.Portions.Zip(plan.Beds))
        {
            Assert.All(batch.Parts, part =>
            {
                var planned = bed.Applications.Single(a => a.Offered.Material.Id == part.Material.Id).PerBed;
                Assert.True(part.Weight.Pounds * (portion.Weight / batch.Weight) <= planned.Pounds * (1 + 1e-9));
            });
        }

        Assert.True(batch.Left.Kilograms >= 0);
    }

    [Fact]
    public void Beds_of_different_needs_are_mixed_one_by_one()
    {
        var plan = Farm.Plan(Farm.Request(
            [Farm.Bed("a", Farm.Test(12, 60, id: "s1"), "cabbage"), Farm.Bed("b", Farm.Test(30, 110, id: "s2"), "cabbage")],
            Farm.Offer("feather-meal", 0.9m), Farm.Offer("bone-meal-steamed", 0.9m), Farm.Offer("potassium-sulfate", 1.1m)));

        Assert.Equal(2, plan.FieldWork!.Mixes.Count);
        Assert.All(plan.FieldWork.Mixes, m => Assert.Single(m.Portions));
        Assert.Contains(plan.FieldWork.NotMixed, n => n.Contains("another proportion", StringComparison.Ordinal));
    }

    [Fact]
    public void Lime_and_compost_stay_out_of_every_mix()
    {
        var plan = Farm.Plan(Farm.Request([Farm.Bed("b", Farm.Test(12, 60, 5.6m, 6.1m), "cabbage")], [.. Shelf.Select(m => Farm.Offer(m, 0.5m)), Farm.Offer("leaf-compost", 0.01m)]));

        Assert.All(plan.FieldWork!.Mixes.SelectMany(m => m.Parts), p => Assert.DoesNotContain(p.Material.Category, new[] { "lime", "compost", "manure" }));
        Assert.Contains(plan.FieldWork.NotMixed, n => n.StartsWith("Never in a mix: Dolomitic limestone", StringComparison.Ordinal));
    }

    [Fact]
    public void A_strip_gets_its_share_of_an_acre_and_each_pound_means_a_rate()
    {
        var request = Farm.Request([Farm.Bed("b", Farm.Test(12, 250), "cabbage")], Farm.Offer("feather-meal", 0.9m)) with
        {
            Measures = FieldMeasures.Of(null, null, null, Length.FromFeet(100), Length.FromFeet(3)),
        };
        var strip = Assert.Single(Farm.Plan(request).FieldWork!.Strips);

        Assert.Equal(strip.Rate.PoundsPerAcre * 300 / 43560, strip.Target.Pounds, 6);
        Assert.Equal(145.2, strip.PerPound.PoundsPerAcre, 6);
    }

    [Fact]
    public void One_check_is_proposed_by_a_stated_rule()
    {
        // Rutgers prints a nitrate table for sweet corn and none for cabbage.
        var corn = CheckOf(Farm.Bed("b", Farm.Test(12, 60), "cabbage"), Farm.Bed("c", Farm.Test(12, 60, id: "s2"), "sweet-corn"));
        var cabbage = CheckOf(Farm.Bed("b", Farm.Test(12, 60), "cabbage"));
        var onlyPotash = Farm.Plan(Farm.Request([Farm.Bed("b", Farm.Test(200, 60), "cabbage")], Farm.Offer("potassium-sulfate", 1.1m))).FieldWork!.Check!;

        Assert.Equal((ProposedCheckKind.NitrateTest, "c"), (corn.Kind, corn.Bed));
        Assert.Equal(ProposedCheckKind.UntreatedStrip, cabbage.Kind);
        Assert.Equal(ProposedCheckKind.Resampling, onlyPotash.Kind);
        // Sampled on 15 September 2026; Ohio State University says every 3 or 4 years.
        Assert.Equal(new DateOnly(2029, 9, 15), onlyPotash.From);
        Assert.Contains("September", onlyPotash.What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("field", 2029)]
    [InlineData("high-tunnel", 2027)]
    public void A_tunnel_is_tested_again_every_year(string site, int year)
    {
        var bed = Farm.Bed("b", Farm.Test(200, 60), "cabbage") with { Site = site };

        Assert.Equal(year, Farm.Plan(Farm.Request([bed], Farm.Offer("potassium-sulfate", 1.1m))).FieldWork!.Check!.From!.Value.Year);
    }

    [Fact]
    public void Where_nothing_is_spread_there_is_no_field_work() =>
        Assert.Null(Farm.Plan(Farm.Request([Farm.Bed("b", Farm.Test(12, 60, 6.8m), "cabbage")], Farm.Offer("calcitic-lime"))).FieldWork);

    [Fact]
    public void Compost_for_structure_is_carried_out_too_and_only_rounded_down()
    {
        var bed = Farm.Bed("b", Farm.Test(12, 60), "cabbage") with { Structure = new StructureAsked("leaf-compost", MassPerArea.FromPoundsPerAcre(3333), null) };
        var pass = Assert.Single(Farm.Plan(Farm.Request([bed], Farm.Offer("leaf-compost"), Farm.Offer("feather-meal", 0.9m))).FieldWork!.Passes, p => p.Material.Id == "leaf-compost");

        // What the plan spreads of it for its nutrients is another entry.
        var amount = Assert.Single(pass.Beds, b => Math.Abs(b.Rate.PoundsPerAcre - 3333) < 1e-6).Amount;
        Assert.InRange(amount.Measured.Pounds, 0.9 * amount.Planned.Pounds, amount.Planned.Pounds);
    }

    [Fact]
    public void A_limit_on_a_metal_holds_the_rate_down_and_a_ceiling_keeps_the_material_out()
    {
        var rule = Farm.Tables.MetalRules["us-maryland-compost"];
        var free = PelletRate(null, rule);
        // Maryland prints 1340 lb/acre of copper: at 900,000 mg/kg of dry matter and 0 % water that allows 1340 / 0.9 = 1489 lb/acre.
        var held = PelletRate(900_000, rule);
        var ceiling = Farm.Plan(Farm.Request([Farm.Bed("b", Farm.Test(12, 60), "cabbage")], Pellets(4301)) with { MetalRule = Farm.Tables.MetalRules["us-40-cfr-503"] });

        Assert.True(free > 1489);
        Assert.InRange(held, 1400, 1489);
        Assert.DoesNotContain(ceiling.Beds[0].Applications, a => a.Offered.Material.Id == "poultry-pellet");
        Assert.Contains(ceiling.Warnings, w => w.Contains("ceiling of 4,300 mg/kg", StringComparison.Ordinal));
        Assert.Contains(ceiling.MaterialTests, t => t.Forbids);
    }

    [Fact]
    public void The_working_of_the_strips_changes_no_number()
    {
        var request = Farm.Request([Farm.Bed("b", Farm.Test(12, 60), "cabbage")], Farm.Offer("feather-meal", 0.9m));
        var (silent, shown) = (Farm.Plan(request).FieldWork!, Farm.Plan(request with { WithWorking = true }).FieldWork!);

        Assert.Equal(silent.Strips.Select(s => s.Target), shown.Strips.Select(s => s.Target));
        Assert.Empty(silent.Working);
        Assert.Contains(shown.Working, l => l.Formula == "strip-target-weight");
    }

    private static IEnumerable<DateOnly?> RoundsOf(int daysApart)
    {
        var (a, b) = (Farm.Bed("a", Farm.Test(12, 60), "cabbage"), Farm.Bed("b", Farm.Test(12, 60, id: "s2"), "cabbage"));
        var later = b with { Plantings = [.. b.Plantings.Select(p => p with { Planted = p.Planted!.Value.AddDays(daysApart), FirstHarvest = p.FirstHarvest!.Value.AddDays(daysApart) })] };
        return Farm.Plan(Farm.Request([a, later], Farm.Offer("feather-meal", 0.9m))).FieldWork!.Passes.Select(p => p.By);
    }

    private static ProposedCheck CheckOf(params Bed[] beds) => Farm.Plan(Farm.Request(beds, Farm.Offer("feather-meal", 0.9m))).FieldWork!.Check!;

    private static double PelletRate(double? copper, MetalRule rule) =>
        Farm.Plan(Farm.Request([Farm.Bed("b", Farm.Test(12, 60), "cabbage")], Pellets(copper)) with { MetalRule = rule }).Beds[0].Applications.Single().Rate.PoundsPerAcre;

    private static MaterialOffer Pellets(double? copper) => Farm.Offer("poultry-pellet", 0.4m) with
    {
        Tested = new GrowerAnalysis(null, null, null, 0, false)
        {
            Metals = copper is { } mg ? new Dictionary<Metal, MetalContent> { [Metal.Cu] = MetalContent.FromMilligramsPerKilogramDry(mg) } : new Dictionary<Metal, MetalContent>(),
        },
    };
}
