using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Tests.Materials;
using static SoilAdvisor.Agronomy.Tests.Certification.InventedBed;
using static SoilAdvisor.Agronomy.Tests.Materials.InventedMaterial;

namespace SoilAdvisor.Agronomy.Tests.Certification;

public class OrganicChecksTests
{
    [Fact]
    public void An_allowed_material_passes_and_must_be_named_in_the_system_plan()
    {
        var finding = Assert.Single(Planned(Meal with { Rule = "nonsynthetic: 205.105(b), 205.203(c)" }));

        Assert.Equal(FindingState.Pass, finding.State);
        Assert.Equal("nonsynthetic-unless-listed", finding.Rule);
        Assert.Contains("organic system plan", finding.Message, StringComparison.Ordinal);
        Assert.False(finding.Blocks);
    }

    [Fact]
    public void A_prohibited_material_blocks_whether_planned_spread_or_on_the_shelf()
    {
        var sludge = Meal with { Id = "sludge", Name = "Sludge", Status = OrganicStatus.Prohibited, Rule = "205.105(a)" };
        var spread = Bed(Planting(Carrot)) with { Applied = [Spread(sludge, Today, Today)] };

        Finding[] findings =
        [
            Assert.Single(Planned(sludge)),
            Assert.Single(OrganicChecks.For(spread, [], [], NoNeed, Rules, Today)),
            Assert.Single(OrganicChecks.OnTheShelf([sludge, Meal, sludge], Rules)),
        ];

        Assert.All(findings, f => Assert.Equal((FindingState.Act, true, "205.105(a)"), (f.State, f.Blocks, f.Section)));
        Assert.All(findings, f => Assert.Contains("Sludge is prohibited", f.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void A_restricted_material_stays_undecided_and_names_the_record()
    {
        var finding = Assert.Single(Planned(Meal with { Status = OrganicStatus.Restricted, Rule = "205.203(d)(2)", Note = "Mined source only; ask the maker which it is." }));

        Assert.Equal((FindingState.NotDecidable, "mined-low-solubility"), (finding.State, finding.Rule));
        Assert.Equal("Mined source only; ask the maker which it is.", finding.Record);
    }

    [Theory]
    [InlineData("burnt-lime", "205.203(d)(2); 205.105(a)", OrganicStatus.Prohibited, "lime-as-mined")]
    [InlineData("by-product-gypsum", "205.203(d)(2); 205.105(a)", OrganicStatus.Prohibited, "gypsum-as-mined")]
    [InlineData("leaf-compost", "205.203(c)(3) or (c)(2)", OrganicStatus.Allowed, "compost-plant-only")]
    [InlineData("kieserite", "205.203(d)(2) if mined; 205.601(j)(6) if synthetic", OrganicStatus.Allowed, "mined-low-solubility")]
    [InlineData("peat", "nonsynthetic", OrganicStatus.Allowed, "nonsynthetic-unless-listed")]
    [InlineData("unknown", "not listed", OrganicStatus.Prohibited, "synthetic-only-if-listed")]
    public void The_rule_is_the_one_whose_section_the_material_names(string id, string sections, OrganicStatus status, string rule) =>
        Assert.Equal(rule, Assert.Single(Planned(Meal with { Id = id, Rule = sections, Status = status })).Rule);

    [Theory]
    [InlineData(Standing.Below, FindingState.Pass, false)]
    [InlineData(Standing.Target, FindingState.Act, true)]
    [InlineData(Standing.Above, FindingState.Act, true)]
    public void Magnesium_sulfate_needs_a_documented_deficiency(Standing magnesium, FindingState state, bool blocks)
    {
        var finding = Assert.Single(OrganicChecks.For(Bed(Planting(Carrot)), [InventedBed.Planned(EpsomSalt)], [InventedRating.Of(Analyte.Mg, magnesium)], NoNeed, Rules, Today));

        Assert.Equal((state, blocks), (finding.State, finding.Blocks));
    }

    [Fact]
    public void Magnesium_sulfate_without_a_magnesium_rating_is_not_decidable() =>
        Assert.Equal(FindingState.NotDecidable, Assert.Single(Planned(EpsomSalt)).State);

    [Theory]
    [InlineData(125, FindingState.NotDecidable)]
    [InlineData(125.1, FindingState.Act)]
    public void Sodium_nitrate_gives_at_most_a_fifth_of_the_nitrogen(double poundsPerAcre, FindingState state)
    {
        // 7 CFR 205.602(h). Need 100 lb N: at most 20 lb, which is 125 lb of 16 % product.
        var nitrate = Of("sodium-nitrate", "mineral", Figure("total-nitrogen", 16), Figure("available-nitrogen-share", 100), Figure("largest-single-rate", 200, "lb/acre"), Figure("wait-before-sowing", 7, "days")) with { Status = OrganicStatus.Restricted, Rule = "205.602(h) 20% of crop N" };
        var need = NoNeed with { Needs = [Need(PlantNutrient.N, "carrot", 100, 120)] };

        var finding = Assert.Single(OrganicChecks.For(Bed(Planting(Carrot)), [InventedBed.Planned(nitrate, poundsPerAcre: poundsPerAcre)], [], need, Rules, Today));

        Assert.Equal(state, finding.State);
        Assert.Equal(state == FindingState.Act, finding.Blocks);
    }

    [Fact]
    public void Sodium_nitrate_without_a_nitrogen_need_is_not_decidable()
    {
        var nitrate = Of("sodium-nitrate", "mineral", Figure("total-nitrogen", 16), Figure("available-nitrogen-share", 100)) with { Status = OrganicStatus.Restricted, Rule = "205.602(h)" };

        Assert.Equal(FindingState.NotDecidable, Assert.Single(Planned(nitrate)).State);
    }

    [Fact]
    public void Manure_compost_without_records_counts_as_raw_and_the_records_are_named()
    {
        var bed = Bed(Planting(Carrot, new(2026, 6, 1)), Planting(Flowers)) with { Applied = [Spread(ManureCompost, new(2026, 4, 1), null)] };

        var finding = Assert.Single(OrganicChecks.For(bed, [], [], NoNeed, Rules, Today));

        Assert.Equal((FindingState.NotDecidable, "compost-process", false), (finding.State, finding.Rule, finding.Blocks));
        Assert.Equal("mix sheet, temperature log and turning dates", finding.Record);
        Assert.Contains("carrot not before 30 July 2026", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("flowers", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Manure_compost_that_would_pass_as_raw_passes()
    {
        var bed = Bed(Planting(Carrot, new(2026, 7, 30))) with { Applied = [Spread(ManureCompost, new(2026, 4, 1), null)] };

        Assert.Equal(FindingState.Pass, Assert.Single(OrganicChecks.For(bed, [], [], NoNeed, Rules, Today)).State);
    }

    [Fact]
    public void Pellets_ask_for_the_makers_record_and_say_the_days_where_no_date_is_known()
    {
        var finding = Assert.Single(Planned(Pellets));

        Assert.Equal("processed-manure", finding.Rule);
        Assert.Equal("maker's record of heat, moisture and pathogens", finding.Record);
        Assert.Contains("carrot not before 120 days after it is worked in", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_material_used_twice_is_found_once()
    {
        var bed = Bed(Planting(Carrot)) with { Applied = [Spread(Meal, Today, Today)] };

        Assert.Single(OrganicChecks.For(bed, [InventedBed.Planned(Meal), InventedBed.Planned(Meal)], [], NoNeed, Rules, Today));
    }

    [Fact]
    public void The_stone_that_limes_the_bed_is_checked_like_any_other_material() =>
        Assert.Equal("lime-as-mined", Assert.Single(OrganicChecks.For(Bed(Planting(Carrot)), [], [], NoNeed, Rules, Today, Meal with { Id = "calcitic-lime", Rule = "205.203(d)(2)" })).Rule);

    [Fact]
    public void A_rule_table_without_a_rule_that_is_needed_is_our_fault_and_stops() =>
        Assert.Throws<KeyNotFoundException>(() => OrganicChecks.For(Bed(Planting(Carrot)), [InventedBed.Planned(RawManure, Today)], [], NoNeed, new Dictionary<string, OrganicRule>(), Today));

    [Fact]
    public void Cautions_of_what_is_spread_come_first_and_those_of_any_ground_last_each_once()
    {
        Caution dust = new("dust", "Dust.", Source), local = new("local-law-first", "Local law.", Source), lead = new("lead-in-old-ground", "Lead.", Source);
        var dusty = Meal with { Cautions = [local, dust] };
        var all = new[] { dust, local, lead }.ToDictionary(c => c.Id);

        var cautions = CautionsFor.Plan(Bed(Planting(Carrot)), [InventedBed.Planned(dusty), InventedBed.Planned(dusty)], null, all);

        Assert.Equal(["dust", "lead-in-old-ground", "local-law-first"], cautions.Select(c => c.Id));
    }

    private static readonly Material EpsomSalt = Of("epsom-salt", "mineral", Figure("magnesium", 10)) with { Name = "Epsom salt", Status = OrganicStatus.Restricted, Rule = "205.601(j)(6) documented SOIL deficiency if synthetic" };

    private static IReadOnlyList<Finding> Planned(Material material) =>
        OrganicChecks.For(Bed(Planting(Carrot)), [InventedBed.Planned(material)], [], NoNeed, Rules, Today);
}
