using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Planning.MaterialChoice;
using UnitsNet;

namespace SoilAdvisor.Planning.Tests.Farms;

public class PlanTests
{
    private static readonly MaterialOffer[] Shelf =
    [
        Farm.Offer("feather-meal", 0.9m), Farm.Offer("soybean-meal", 0.45m), Farm.Offer("bone-meal-steamed", 0.8m), Farm.Offer("potassium-sulfate", 0.9m),
        Farm.Offer("langbeinite", 0.6m), Farm.Offer("dairy-composted", 0.03m), Farm.Offer("calcitic-lime", 0.1m), Farm.Offer("dolomitic-lime", 0.12m),
    ];

    [Fact]
    public void A_whole_farm_is_planned_on_the_real_tables()
    {
        var (low, acid, rich) = (Farm.Test(14, 60, id: "low"), Farm.Test(30, 180, 5.6m, 6.2m, id: "acid"), Farm.Test(400, 400, id: "rich"));
        var plan = Farm.Plan(Farm.Request(
            [
                Farm.Bed("1", low, "broccoli", "spinach") with { Gap = new Gap(new DateOnly(2027, 6, 28), new DateOnly(2027, 8, 10)) },
                Farm.Bed("2", acid, "tomato"),
                Farm.Bed("3", rich, "carrot"),
            ],
            Shelf));
        Assert.Equal(["1", "2", "3"], plan.Beds.Select(b => b.Bed.Id));
        Assert.Equal("delaware-vegetables", plan.Guide.Id);
        Assert.Equal("mid-atlantic-vegetables", plan.RateTable?.Id);
        Assert.Contains("new-jersey-vegetables", plan.OtherGuides);
        Assert.NotNull(plan.Beds[0].CoverCrops);
        Assert.Null(plan.Beds[1].CoverCrops);
        Assert.NotNull(plan.Beds[1].Lime?.Chosen);
        Assert.All(plan.Beds, b => Assert.NotEqual(BedState.Refused, b.State));
        Assert.Equal(plan.Beds.Sum(b => b.Cost!.Value.Value), plan.Cost!.Value.Value);
        Assert.Equal(
            plan.Beds.SelectMany(b => b.Applications).Where(a => a.Offered.Material.Id == "feather-meal").Sum(a => a.PerBed.Pounds),
            plan.Purchases.Single(p => p.Offered.Material.Id == "feather-meal").Needed.Pounds,
            1e-9);
    }

    [Fact]
    public void Every_floor_is_met_or_stands_under_shortfalls_and_every_ceiling_holds()
    {
        foreach (var test in new[] { Farm.Test(14, 60), Farm.Test(30, 180, 5.6m, 6.2m), Farm.Test(80, 300), Farm.Test(400, 400) })
        {
            foreach (var shelf in new[] { Shelf, [] })
            {
                var bed = Farm.PlanOne(Farm.Bed("b", test, "broccoli", "spinach"), shelf);
                foreach (var balance in bed.Balances)
                {
                    var missed = bed.Shortfalls.Where(s => s.Nutrient == balance.Nutrient).Sum(s => s.By.PoundsPerAcre);
                    Assert.True(balance.Supplied.PoundsPerAcre + missed >= (balance.Floor ?? default).PoundsPerAcre - 0.01, $"{balance.Nutrient}: {balance}");
                    Assert.True(balance.Ceiling is not { } ceiling || balance.Supplied.PoundsPerAcre <= ceiling.PoundsPerAcre * (1 + 1e-9), $"{balance.Nutrient}: {balance}");
                }
            }
        }
    }

    [Fact]
    public void Where_nothing_is_needed_the_first_sentence_says_so()
    {
        // Spinach asks for at most 125 lb N; 3000 lb/acre of feather meal brought 3000 × 0.12 × 0.60 = 216 lb.
        var bed = Farm.Bed("b", Farm.Test(400, 400), "spinach");
        var feather = new AppliedMaterial(Farm.Tables.Material("feather-meal").Value, Analysis("feather-meal"), MassPerArea.FromPoundsPerAcre(3000).On(bed.Area), new DateOnly(2026, 10, 1), null);
        var plan = Farm.PlanOne(bed with { Applied = [feather] }, Shelf);
        Assert.StartsWith("Nothing to spread on bed b: the soil and the credits cover every need that was planned, and no lime is needed.", plan.Summary);
        Assert.Empty(plan.Applications);
        Assert.Empty(plan.Shortfalls);
        Assert.Null(plan.Cost);
    }

    [Fact]
    public void Nitrogen_spread_for_this_season_is_subtracted_whatever_the_day_of_sampling_and_that_of_earlier_seasons_is_not()
    {
        var bed = Farm.Bed("b", Farm.Test(80, 300), "spinach");
        AppliedMaterial Feather(DateOnly day) => new(Farm.Tables.Material("feather-meal").Value, Analysis("feather-meal"), MassPerArea.FromPoundsPerAcre(500).On(bed.Area), day, null);
        double Floor(Bed of) => Farm.PlanOne(of, Shelf).Balances.Single(b => b.Nutrient == Nutrient.AvailableN).Floor!.Value.PoundsPerAcre;

        // 500 × 0.12 × 0.60 = 36 lb N of the 80 that the guide starts at.
        Assert.Equal(44, Floor(bed with { Applied = [Feather(new DateOnly(2026, 9, 15))] }), 1e-6);
        Assert.Equal(44, Floor(bed with { Applied = [Feather(new DateOnly(2026, 9, 14))] }), 1e-6);

        // Planted on 20 April 2027: 270 days before it is 24 July 2026.
        Assert.Equal(44, Floor(bed with { Applied = [Feather(new DateOnly(2026, 7, 24))] }), 1e-6);
        Assert.Equal(80, Floor(bed with { Applied = [Feather(new DateOnly(2026, 7, 23))] }), 1e-6);
    }

    [Fact]
    public void Lime_is_fixed_first_and_its_magnesium_counts()
    {
        var bed = Farm.PlanOne(Farm.Bed("b", Farm.Test(80, 300, 5.6m, 6.2m, mg: 20), "broccoli"), Farm.Offer("dolomitic-lime", 0.1m), Farm.Offer("feather-meal", 0.9m));
        Assert.Equal("dolomitic-lime", bed.Lime?.Chosen?.Offered.Material.Id);
        Assert.Equal(bed.Lime!.Chosen!.Supplied[Nutrient.Mg], bed.Balances.Single(b => b.Nutrient == Nutrient.Mg).Supplied);
        var acid = bed.Balances.Single(b => b.Nutrient == Nutrient.CalciumCarbonate);
        Assert.Equal(acid.Floor!.Value.PoundsPerAcre, acid.Supplied.PoundsPerAcre, 1e-6);
    }

    [Fact]
    public void Without_lime_on_the_list_the_requirement_is_a_shortfall_that_names_stones()
    {
        var bed = Farm.PlanOne(Farm.Bed("b", Farm.Test(400, 400, 5.6m, 6.2m), "spinach"), Farm.Offer("feather-meal", 0.9m));
        var shortfall = Assert.Single(bed.Shortfalls);
        Assert.Equal(Nutrient.CalciumCarbonate, shortfall.Nutrient);
        Assert.Equal(bed.Lime!.Requirement.Rate.Amount, shortfall.By);
        Assert.Contains("No lime is on your list", shortfall.WhatWouldMeetIt);
        Assert.Contains("limestone", shortfall.WhatWouldMeetIt);
    }

    [Fact]
    public void At_the_stop_limit_no_manure_or_compost_is_spread_and_the_trace_holds()
    {
        var bed = Farm.PlanOne(Farm.Bed("b", Farm.Test(400, 400), "broccoli"), Shelf);
        Assert.DoesNotContain(bed.Applications, a => a.Offered.Material.Id == "dairy-composted");
        Assert.InRange(bed.Balances.Single(b => b.Nutrient == Nutrient.TotalP2O5).Supplied.PoundsPerAcre, 0, 5 * (1 + 1e-9));
        Assert.Contains(bed.Warnings, w => w.Contains("stop limit", StringComparison.Ordinal));
    }

    [Fact]
    public void A_gap_names_the_nutrient_the_amount_and_what_would_meet_it()
    {
        // 1200 lb of feather meal, its largest single rate, × 0.12 × 0.60 = 86.4 lb of the 150 lb N that broccoli starts at.
        var bed = Farm.PlanOne(Farm.Bed("b", Farm.Test(400, 400), "broccoli"), Farm.Offer("feather-meal", 0.9m), Farm.Offer("gypsum", 0.1m));
        var shortfall = Assert.Single(bed.Shortfalls);
        Assert.Equal(Nutrient.AvailableN, shortfall.Nutrient);
        Assert.Equal(0, shortfall.PlantingIndex);
        Assert.Equal(150 - 86.4, shortfall.By.PoundsPerAcre, 0.01);
        Assert.Contains("second dressing", shortfall.WhatWouldMeetIt);
        Assert.Contains("shortfalls", bed.Summary);
        Assert.Single(bed.Applications, a => a.Offered.Material.Id == "feather-meal");
    }

    [Fact]
    public void A_gap_made_by_a_ceiling_names_the_ceiling_and_what_the_materials_would_need()
    {
        // Soybean meal brings 0.5 % total P2O5, so a trace of 5 lb allows 1000 lb: 1000 × 0.07 × 0.55 = 38.5 lb of the 50 lb N
        // that carrot starts at. 50 lb would take 1299 lb of meal with 6.5 lb of total P2O5.
        var bed = Farm.PlanOne(Farm.Bed("b", Farm.Test(400, 400), "carrot"), Farm.Offer("soybean-meal", 0.45m));
        var shortfall = Assert.Single(bed.Shortfalls);
        Assert.Equal(50 - 38.5, shortfall.By.PoundsPerAcre, 0.01);
        Assert.Contains("What stands in the way is the limit of 5 lb/acre on total phosphate (P2O5)", shortfall.WhatWouldMeetIt);
        Assert.Contains("would need 6.5 lb/acre", shortfall.WhatWouldMeetIt);
        Assert.Contains("which you did not list, would meet it", shortfall.WhatWouldMeetIt);
    }

    [Fact]
    public void A_gap_that_nothing_closes_says_so()
    {
        // Two needs without a material each: no single addition closes both, and each is tried for itself.
        var bed = Farm.PlanOne(Farm.Bed("b", Farm.Test(14, 60, 7.2m), "broccoli"), Farm.Offer("gypsum", 0.1m));
        Assert.Equal([Nutrient.AvailableN, Nutrient.AvailableP2O5, Nutrient.K2O], bed.Shortfalls.Select(s => s.Nutrient).Order());
        Assert.All(bed.Shortfalls, s => Assert.False(string.IsNullOrWhiteSpace(s.WhatWouldMeetIt)));
    }

    [Fact]
    public void Prohibited_materials_never_enter_and_are_a_finding()
    {
        var plan = Farm.Plan(Farm.Request([Farm.Bed("b", Farm.Test(14, 60), "broccoli")], Farm.Offer("urea-ammonium-nitrogen", 0.01m), Farm.Offer("acidulated-phosphate", 0.01m), Farm.Offer("biosolids", 0.001m), Farm.Offer("feather-meal", 0.9m)));
        Assert.Equal(["feather-meal"], plan.Beds[0].Applications.Select(a => a.Offered.Material.Id));
        Assert.Equal(3, plan.Findings.Count);
        Assert.Empty(Farm.Plan(Farm.Request([Farm.Bed("b", Farm.Test(14, 60), "broccoli")])).Findings);
    }

    [Fact]
    public void Without_a_list_nothing_prohibited_raw_or_micronutrient_is_taken()
    {
        var plan = Farm.Plan(Farm.Request([Farm.Bed("b", Farm.Test(14, 60), "broccoli", "spinach")]));
        Assert.NotEmpty(plan.Beds[0].Applications);
        Assert.All(plan.Beds[0].Applications, a => Assert.True(a.Offered.Material is { Status: not Agronomy.Materials.OrganicStatus.Prohibited, Manure: not Agronomy.Materials.ManureKind.Raw, Category: not "micronutrient" }));
        Assert.Contains(plan.Assumptions, a => a.Code == "materials-not-listed");
    }

    [Fact]
    public void Without_prices_the_objective_is_least_excess_then_least_mass_and_says_so()
    {
        var plan = Farm.Plan(Farm.Request([Farm.Bed("b", Farm.Test(80, 300), "spinach")], Farm.Offer("feather-meal"), Farm.Offer("blood-meal")));
        Assert.StartsWith("No material has a price. Least supply above what is needed", plan.Objective);
        Assert.Null(plan.Cost);
        Assert.DoesNotContain(plan.Assumptions, a => a.Code == "no-price");
    }

    [Fact]
    public void With_some_prices_the_burdens_and_what_has_no_price_are_said()
    {
        var plan = Farm.Plan(Farm.Request([Farm.Bed("b", Farm.Test(80, 300), "spinach")], Farm.Offer("feather-meal", 0.9m), Farm.Offer("kelp-meal")));
        Assert.Contains("0.05 USD for each pound", plan.Objective);
        Assert.Contains("0.0005 USD", plan.Objective);
        Assert.Contains("has no price", plan.Assumptions.Single(a => a.Code == "no-price").Text);
    }

    [Fact]
    public void Stock_of_the_only_material_lowers_what_is_bought_and_not_what_is_spread()
    {
        var bed = Farm.Bed("b", Farm.Test(80, 300), "spinach");
        var (bought, partly, whole) = (Buy(null), Buy(1), Buy(1000));
        Assert.Null(bought.OnHand);
        Assert.Equal(bought.Needed, bought.ToBuy);
        Assert.Equal(bought.Needed.Pounds - 1, partly.ToBuy.Pounds, 1e-9);
        Assert.Equal(0, whole.ToBuy.Pounds);
        Assert.Equal(0, whole.Cost!.Value.Value);
        Assert.Equal(bought.Needed.Pounds, whole.Needed.Pounds, 1e-6);

        Purchase Buy(double? stock) => Farm.Plan(Farm.Request([bed], Farm.Offer("feather-meal", 0.9m, stock))).Purchases.Single();
    }

    [Fact]
    public void Sodium_nitrate_gives_at_most_a_fifth_of_the_nitrogen()
    {
        // 7 CFR 205.602(h): no more than 20 percent of the crop's nitrogen.
        var bed = Farm.PlanOne(Farm.Bed("b", Farm.Test(80, 300), "spinach"), Farm.Offer("sodium-nitrate", 0.01m), Farm.Offer("feather-meal", 0.9m));
        var nitrate = bed.Applications.Single(a => a.Offered.Material.Id == "sodium-nitrate");
        Assert.Equal(0.2 * 80, nitrate.Rate.PoundsPerAcre * nitrate.Offered.Analysis.Share(Nutrient.AvailableN), 1e-6);
    }

    [Fact]
    public void Lime_and_rock_phosphate_never_meet_on_one_bed_in_one_season()
    {
        MaterialOffer[] offers = [Farm.Offer("rock-phosphate-soft", 0.01m), Farm.Offer("bone-meal-steamed", 0.8m), Farm.Offer("feather-meal", 0.9m), Farm.Offer("calcitic-lime", 0.1m), Farm.Offer("potassium-sulfate", 0.9m)];
        var limed = Farm.PlanOne(Farm.Bed("b", Farm.Test(14, 60, 5.2m, 6.0m), "potato"), offers);
        Assert.True(limed.Lime?.Chosen is null || limed.Applications.All(a => a.Offered.Material.Id != "rock-phosphate-soft"));
        Assert.NotNull(Farm.PlanOne(Farm.Bed("b", Farm.Test(14, 60, 5.6m, 6.2m), "broccoli"), offers).Lime?.Chosen);
    }

    [Fact]
    public void Requests_that_cannot_be_planned_are_refused_with_a_code()
    {
        Assert.Equal("no-beds", FarmPlanner.Plan(Farm.Request([]), Farm.Tables, default).Reason.Code);
        Assert.Equal("material-listed-twice", FarmPlanner.Plan(Farm.Request([Farm.Bed("b", Farm.Test(14, 60), "spinach")], Farm.Offer("blood-meal", 1m), Farm.Offer("blood-meal")), Farm.Tables, default).Reason.Code);
        var euros = Farm.Offer("feather-meal") with { PricePerKilogram = new Agronomy.Materials.Money(2, "EUR") };
        Assert.Equal("two-currencies", FarmPlanner.Plan(Farm.Request([Farm.Bed("b", Farm.Test(14, 60), "spinach")], euros, Farm.Offer("blood-meal", 1m)), Farm.Tables, default).Reason.Code);
    }

    [Fact]
    public void A_cancelled_plan_stops() =>
        Assert.Throws<OperationCanceledException>(() => FarmPlanner.Plan(Farm.Request([Farm.Bed("b", Farm.Test(14, 60), "spinach")]), Farm.Tables, new CancellationToken(canceled: true)));

    private static Agronomy.Materials.MaterialAnalysis Analysis(string material) =>
        Agronomy.Materials.MaterialAnalyses.For(Farm.Tables.Material(material).Value, null, null).Value;
}
